package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

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
record Beside(Prospect prospect, @Nullable CallRule left) {
  /**
   * @param plan the best plan; without cuts where the lawn is left alone
   * @param conflicts where rules of thumb disagree
   */
  Particulars of(Plan plan, List<String> conflicts) {
    Due due = new Due(prospect);
    boolean mown = left == null && plan.choice() != Choice.LOWER_ONCE_AND_COLLECT;
    int safe = mown || left == CallRule.DUE ? due.lastSafeDay() : -1;
    int chosen = mown ? plan.day() : 0;
    return new Particulars(
        plan.cuts().stream()
            .map(
                cut ->
                    new Particulars.Cut(
                        prospect.date(cut.day()), cut.toMm(), cut.returnedShare() > 0))
            .toList(),
        safe < 0 || safe < chosen ? null : prospect.date(safe),
        mown ? noSafeDay(due, safe, chosen) : "",
        hours(),
        prospect.todayUntold()
            ? null
            : DryHours.of(
                prospect.hours(),
                prospect.reader(),
                prospect.rules().threshold(CallRule.DRY_HOURS_SHARE)),
        conflicts,
        new WateringAdvice(prospect).sentences(),
        new PlacingRules(prospect.known(), prospect.known().inSeed())
            .placing(prospect.today().on()),
        lying());
  }

  private List<LyingCut> lying() {
    LawnToday today = prospect.today();
    return today
        .fallen()
        .lying(
            today.equations().parameters().get("cC"),
            prospect.known().ownSight(),
            prospect.rules());
  }

  /** Why no day is safe; empty where one is, or none is in sight. */
  private String noSafeDay(Due due, int safe, int chosen) {
    if (safe >= chosen || due.safe(chosen)) {
      return "";
    }
    double over = due.overFraction(chosen);
    DayNames days = new DayNames(prospect.today().on());
    String comesOff =
        say(
            "more than %s would come off in one cut %s%s",
            prospect.rules().third(), days.when(chosen), in(chosen, over));
    return safe < 0
        ? "No safe day is left: " + comesOff
        : say(
            "No safe day is fit to mow: up to %s no more than %s would come off, but other rules speak against those days; %s",
            days.name(safe), prospect.rules().third(), comesOff);
  }

  /** In how many of the possible seasons; nothing of a height that is the same in all of them. */
  private String in(int day, double fraction) {
    Spread height = prospect.spreadOf(season -> season.heightMm()[day]);
    return height.low() == height.high()
        ? ""
        : say(" in %s of the possible seasons", Words.percent(fraction));
  }

  private List<Particulars.Hours> hours() {
    HourWords words =
        new HourWords(
            prospect.hours(),
            prospect.reader(),
            prospect.rules().threshold(CallRule.DRY_HOURS_SHARE));
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
