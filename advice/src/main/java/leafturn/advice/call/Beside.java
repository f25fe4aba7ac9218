package leafturn.advice.call;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.model.weather.hourly.GrassDay.Span;
import org.jspecify.annotations.Nullable;

/**
 * Works out what goes with an answer.
 *
 * @param left why the lawn is left alone, or null where it is mown
 */
record Beside(Prospect prospect, Weighing weighing, @Nullable CallRule left) {
  /**
   * @param plan the best plan; without cuts where the lawn is left alone
   * @param conflicts where rules of thumb disagree
   */
  Particulars of(Plan plan, List<String> conflicts) {
    Due due = prospect.due();
    boolean mown = left == null && plan.choice() != Choice.LOWER_ONCE_AND_COLLECT;
    int safe = mown || left == CallRule.DUE ? due.lastSafeDay() : -1;
    int chosen = mown ? plan.day() : 0;
    boolean passed = safe < chosen && prospect.known().facts().visits().firstDayIsChosen();
    return new Particulars(
        plan.cuts().stream()
            .map(
                cut ->
                    new Particulars.Cut(
                        prospect.date(cut.day()), cut.toMm(), cut.returnedShare() > 0))
            .toList(),
        safe < 0 || safe < chosen ? null : prospect.date(safe),
        mown ? new UnfitDays(prospect, weighing).words(due, passed ? -1 : safe, chosen) : "",
        hours(),
        prospect.todayUntold()
            ? null
            : DryHours.of(prospect.hours(), prospect.reader(), prospect.rules()),
        conflicts,
        new WateringAdvice(prospect).sentences(left == null ? plan.day() : -1, atRest()),
        new HeldCuts(prospect)
            .placing(
                left == null ? plan : Plan.unmown(),
                new PlacingRules(prospect.known(), prospect.known().inSeed())),
        lying());
  }

  private boolean atRest() {
    return left == CallRule.DORMANT || left == CallRule.HARDLY_GROWING;
  }

  /** None on a lawn that was not mown since it was sown: its cuts are those of the grass before. */
  private List<LyingCut> lying() {
    if (prospect.known().newlySeeded()) {
      return List.of();
    }
    LawnToday today = prospect.today();
    return today
        .fallen()
        .lying(today.equations().parameters().get("cC"), prospect.known(), prospect.rules());
  }

  private List<Particulars.Hours> hours() {
    HourWords words =
        new HourWords(prospect.hours(), prospect.reader(), HourWords.Told.by(prospect.rules()));
    List<Particulars.Hours> hours = new ArrayList<>();
    for (int day = 0; MowingHours.has(day) && !prospect.todayUntold(); day++) {
      Optional<Span> span = prospect.dryHours(day);
      hours.add(
          new Particulars.Hours(
              prospect.date(day),
              span.map(Span::from).orElse(null),
              span.map(Span::to).orElse(null),
              words.of(day)));
    }
    return hours;
  }
}
