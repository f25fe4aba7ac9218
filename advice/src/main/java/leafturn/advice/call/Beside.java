package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leafturn.model.weather.hourly.GrassDay.Span;
import org.jspecify.annotations.Nullable;

/**
 * Works out what goes with an answer.
 *
 * @param left why the lawn is left alone, or null where it is mown
 */
record Beside(Prospect prospect, @Nullable CallRule left) {
  /** Where the answer is not to mow, however tall the grass, there is no last day to do it. */
  private static final Set<CallRule> NO_HURRY =
      EnumSet.of(CallRule.SEASON, CallRule.DORMANT, CallRule.HARDLY_GROWING);

  /**
   * @param plan the best plan; without cuts where the lawn is left alone
   * @param conflicts where rules of thumb disagree
   */
  Particulars of(Plan plan, List<String> conflicts) {
    return new Particulars(
        plan.cuts().stream()
            .map(
                cut ->
                    new Particulars.Cut(
                        prospect.date(cut.day()), cut.toMm(), cut.returnedShare() > 0))
            .toList(),
        lastSafeDay(),
        hours(),
        DryHours.of(
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

  private @Nullable LocalDate lastSafeDay() {
    int day = left != null && NO_HURRY.contains(left) ? -1 : new Due(prospect).lastSafeDay();
    return day < 0 ? null : prospect.date(day);
  }

  private List<Particulars.Hours> hours() {
    HourWords words =
        new HourWords(
            prospect.hours(),
            prospect.reader(),
            prospect.rules().threshold(CallRule.DRY_HOURS_SHARE));
    List<Particulars.Hours> hours = new ArrayList<>();
    for (int day = 0; MowingHours.has(day); day++) {
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
