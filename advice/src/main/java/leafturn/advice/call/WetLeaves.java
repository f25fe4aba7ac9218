package leafturn.advice.call;

import leafturn.advice.call.DaysAhead.Season;
import leafturn.model.weather.hourly.GrassDay.WetFrom;

/**
 * Whether leaves count as wet on a day. Today and tomorrow it takes hours that are dry: rain of
 * other hours rules no day out. Later days go by the water of that day and the day before, which
 * decides only where it is wet in a clear majority of the possible seasons: until then nobody knows
 * their weather. Where the last days were not measured, today and tomorrow count as dry: the look
 * outside that the advice then asks for decides.
 */
final class WetLeaves {
  private final Prospect prospect;
  private final CallRules rules;
  private final double[] wetFractions = new double[WeatherToCome.DAYS + 1];

  WetLeaves(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    for (int day = 0; day < wetFractions.length; day++) {
      wetFractions[day] = fraction(day);
    }
  }

  /** True when leaves are wet on a day of a possible season. */
  boolean in(Season season, int day) {
    if (MowingHours.has(day)) {
      return !prospect.todayUntold() && prospect.dryHours(day).isEmpty();
    }
    return season.waterMm(day) > rules.threshold(CallRule.WET)
        || season.waterMm(day - 1) > rules.threshold(CallRule.WET_YESTERDAY);
  }

  private double fraction(int day) {
    long wet = prospect.seasons().stream().filter(season -> in(season, day)).count();
    return (double) wet / prospect.seasons().size();
  }

  /** Share of the possible seasons in which leaves are wet on a day, 0-1. */
  double wetFraction(int day) {
    return wetFractions[day];
  }

  /** True when leaves count as wet on a day. */
  boolean on(int day) {
    return wetFractions[day] >= rules.threshold(CallRule.WET_SHARE);
  }

  /** True when nobody knows yet whether leaves will be wet on a day: it is told with its share. */
  boolean open(int day) {
    return !on(day) && wetFractions[day] > 1 - rules.threshold(CallRule.WET_SHARE);
  }

  /** True when the hours to mow in, of today (0) or tomorrow (1), follow hours wet with rain. */
  boolean dryAfterRain(int day) {
    return prospect
        .dryHours(day)
        .filter(span -> span.from() > 0)
        .map(span -> prospect.hours().day(day).mostlyWetFrom(span.from() - 1))
        .filter(WetFrom.RAIN::equals)
        .isPresent();
  }

  /** True when the leaves were found wet today, or it rained, and nobody found them dry since. */
  boolean now() {
    return seenNow() || rainUnseen();
  }

  private boolean seenNow() {
    return prospect.known().wetToday().isPresent() && prospect.known().dryFrom().isEmpty();
  }

  /** Rain of today by the weather, at an hour that nobody told. */
  private boolean rainUnseen() {
    return prospect.today().weatherKnown()
        && !prospect.known().lookedToday()
        && !prospect.todayUntold()
        && prospect.inMost(
            season -> prospect.seasons().get(season).waterMm(0) > rules.threshold(CallRule.WET));
  }
}
