package leafturn.advice.call;

import java.time.LocalDate;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import leafturn.advice.call.DaysAhead.Season;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.Programme;

/**
 * The lawn unmown, today and on the days to come, seen through the rules. What differs between
 * possible seasons is told by its median, and a condition holds when it holds in more than half of
 * them.
 */
final class Prospect {
  private final Lawn lawn;
  private final LawnToday today;
  private final List<Season> seasons;
  private final CallRules rules;
  private final Reader reader;
  private final MowingSeason mowingSeason;

  Prospect(Lawn lawn, LawnToday today, List<Season> seasons, Asked asked) {
    this.lawn = lawn;
    this.today = today;
    this.seasons = seasons;
    this.rules = asked.rules();
    this.reader = new Reader(asked.units());
    this.mowingSeason = new MowingSeason(mowing());
  }

  Programme.Mowing mowing() {
    return lawn.programme().mowing();
  }

  MowingSeason mowingSeason() {
    return mowingSeason;
  }

  CallRules rules() {
    return rules;
  }

  /** For whom the words are. */
  Reader reader() {
    return reader;
  }

  LawnToday today() {
    return today;
  }

  List<Season> seasons() {
    return seasons;
  }

  boolean warmSeasonGrass() {
    return lawn.ground().grass().warmSeason();
  }

  /** True when the programme waters the lawn. */
  boolean watered() {
    return lawn.programme().irrigationShareOfDemand() > 0;
  }

  double cutHeightMm() {
    return mowing().heights().on(today.on());
  }

  LocalDate date(int day) {
    return today.on().plusDays(day);
  }

  double medianOf(ToDoubleFunction<Season> quantity) {
    return spreadOf(quantity).middle();
  }

  Spread spreadOf(ToDoubleFunction<Season> quantity) {
    return Spread.of(seasons.stream().mapToDouble(quantity).toArray());
  }

  /** Height on a day, mm. */
  double heightMm(int day) {
    return medianOf(season -> season.heightMm()[day]);
  }

  /** Length of the pieces that a cut to a height would leave, mm. */
  double lengthMm(int day, double toMm) {
    return Math.max(0, heightMm(day) - toMm);
  }

  /** Share of a height that a cut takes, 0-1. */
  static double takenFraction(double heightMm, double toMm) {
    return heightMm > toMm ? 1 - toMm / heightMm : 0;
  }

  /** Dry clippings of a cut, g/m2: mass above the cut that the mower handles. */
  double dryGPerM2(double lengthMm) {
    return today.equations().parameters().get("eff")
        * today.equations().leafGPerM2AndMm()
        * lengthMm;
  }

  /** Clump index of pieces of a length, for wet or dry grass. */
  double clumpIndex(double dryGPerM2, boolean wet) {
    return ClumpRisk.index(
        dryGPerM2,
        rules.threshold(CallRule.DECK_FACTOR),
        rules.threshold(wet ? CallRule.CLUMP_LIMIT_WET : CallRule.CLUMP_LIMIT_DRY));
  }

  /** True when leaves count as wet on a day of a possible season. */
  boolean wet(Season season, int day) {
    return season.waterMm(day) > rules.threshold(CallRule.WET)
        || season.waterMm(day - 1) > rules.threshold(CallRule.WET_YESTERDAY);
  }

  boolean wet(int day) {
    return inMost(season -> wet(seasons.get(season), day));
  }

  boolean frost(int day) {
    return inMost(season -> seasons.get(season).minimumC()[day] <= rules.threshold(CallRule.FROST));
  }

  boolean saturated(int day) {
    return inMost(
        season ->
            seasons.get(season).soilWaterFraction()[day] >= rules.threshold(CallRule.SATURATED));
  }

  boolean soft(int day) {
    return inMost(
        season ->
            seasons.get(season).waterOfThreeDaysBeforeMm(day)
                > rules.threshold(CallRule.SOFT_GROUND));
  }

  boolean hot(int day) {
    return !warmSeasonGrass()
        && inMost(season -> seasons.get(season).maximumC()[day] >= rules.threshold(CallRule.HEAT));
  }

  /**
   * True when a cut is due on a day: by the programme, or because a day later more than a third
   * would come off.
   */
  boolean due(int day) {
    return inMost(season -> due(seasons.get(season), day));
  }

  boolean due(Season season, int day) {
    int next = Math.min(day + 1, WeatherToCome.DAYS);
    boolean lastChance =
        takenFraction(season.heightMm()[next], cutHeightMm()) > thirdAndTolerance();
    double taken = takenFraction(season.heightMm()[day], cutHeightMm());
    return lastChance || taken >= rules.threshold(CallRule.ONE_THIRD) || byProgramme(season, day);
  }

  private boolean byProgramme(Season season, int day) {
    double heightMm = season.heightMm()[day];
    if (mowing().byOneThirdRule()) {
      return takenFraction(heightMm, cutHeightMm()) >= rules.threshold(CallRule.DUE);
    }
    return today.daysSinceMowing() + day >= mowing().everyDays()
        && heightMm - cutHeightMm() >= rules.threshold(CallRule.LEAST_GROWTH);
  }

  /** Largest share of the height that still counts as a third. */
  double thirdAndTolerance() {
    return rules.threshold(CallRule.ONE_THIRD) + rules.threshold(CallRule.ONE_THIRD_TOLERANCE);
  }

  /** First day on which a condition holds in a season, or -1. */
  static int firstDay(IntPredicate holds) {
    for (int day = 0; day <= WeatherToCome.DAYS; day++) {
      if (holds.test(day)) {
        return day;
      }
    }
    return -1;
  }

  private boolean inMost(IntPredicate holdsInSeason) {
    int count = 0;
    for (int season = 0; season < seasons.size(); season++) {
      count += holdsInSeason.test(season) ? 1 : 0;
    }
    return 2 * count > seasons.size();
  }
}
