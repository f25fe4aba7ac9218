package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leafturn.model.weather.hourly.GrassDay.Span;
import org.jspecify.annotations.Nullable;

/** Works out what goes with an answer. */
record Beside(Prospect prospect) {
  /** Share of the possible seasons in which a safe day must be safe. */
  private static final double SAFE_FRACTION = 0.9;

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
    LocalDate last = null;
    for (int day = 0; day <= WeatherToCome.DAYS; day++) {
      if (!safe(day)) {
        return last;
      }
      last = prospect.visit(day) ? prospect.date(day) : last;
    }
    return null;
  }

  private boolean safe(int day) {
    long safe =
        prospect.seasons().stream()
            .filter(
                season ->
                    Prospect.takenFraction(season.heightMm()[day], prospect.cutHeightMm())
                        <= prospect.thirdAndTolerance())
            .count();
    return safe >= SAFE_FRACTION * prospect.seasons().size();
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
