package leafturn.advice.call;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import leafturn.advice.call.DaysAhead.Season;
import leafturn.model.grass.Species;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.Programme;
import leafturn.model.weather.hourly.GrassDay.Span;

/**
 * The lawn unmown, today and on the days to come, seen through the rules. What differs between
 * possible seasons is told by its median, and a condition holds when it holds in more than half of
 * them.
 */
final class Prospect {
  private static final double SECONDS_PER_HOUR = 3600;

  private final Lawn lawn;
  private final LawnToday today;
  private final List<Season> seasons;
  private final Basis basis;
  private final MowingHours hours;
  private final List<Optional<Span>> dryHours;
  private final MowingSeason mowingSeason;
  private final Due due;
  private final WetLeaves leaves;
  private final DayWeather weather = new DayWeather(this);
  private final double[] heightsMm = new double[WeatherToCome.DAYS + 1];

  Prospect(Lawn lawn, LawnToday today, List<Season> seasons, Basis basis, MowingHours hours) {
    this.lawn = lawn;
    this.today = today;
    this.seasons = seasons;
    this.basis = basis;
    this.hours = hours;
    this.mowingSeason = new MowingSeason(mowing());
    this.dryHours = List.of(reckonedHours(0), reckonedHours(1));
    for (int day = 0; day < heightsMm.length; day++) {
      int shown = day;
      heightsMm[day] = medianOf(season -> season.heightMm()[shown]);
    }
    this.due = new Due(this);
    this.leaves = new WetLeaves(this);
  }

  Known known() {
    return basis.known();
  }

  /** True where other days stand in for the weather of the last days, which nobody has measured. */
  boolean standsIn() {
    return !basis.measured();
  }

  /** True where the same goes for today, and neither a forecast nor a look tells more. */
  boolean todayUntold() {
    return standsIn() && basis.asked().seasons().forecast() == null && !known().lookedToday();
  }

  MowingHours hours() {
    return hours;
  }

  /** The longest hours of today (0) or tomorrow (1) to mow in, if they are long enough. */
  Optional<Span> dryHours(int day) {
    return dryHours.get(day);
  }

  private Optional<Span> reckonedHours(int day) {
    return longestHours(day).filter(span -> span.hours() >= rules().threshold(CallRule.DRY_HOURS));
  }

  /** The longest hours of today (0) or tomorrow (1) that are dry and free of frost, if any. */
  Optional<Span> longestHours(int day) {
    int from = day == 0 ? thawedAt() : 0;
    return hours.fit(day, rules().threshold(CallRule.DRY_HOURS_SHARE)).stream()
        .filter(span -> span.to() > from)
        .map(span -> new Span(Math.max(from, span.from()), span.to()))
        .max(Comparator.comparingInt(Span::hours));
  }

  /** Hour from which grass seen frozen today may be stepped on; 0 where no frost was seen. */
  private int thawedAt() {
    double thawHours = rules().threshold(CallRule.THAW_HOURS);
    return known()
        .frostAt()
        .map(at -> (int) Math.ceil(at.toSecondOfDay() / SECONDS_PER_HOUR + thawHours))
        .orElse(0);
  }

  Species grass() {
    return lawn.ground().grass();
  }

  /** True when annual bluegrass is in seed in a lawn of another grass: its own sows nothing new. */
  boolean foreignSeed() {
    return known().inSeed() && grass() != Species.ANNUAL_BLUEGRASS;
  }

  /** Leaf grown of late, by heights measured since the last mowing, else as reckoned, g/m2/d. */
  double recentGrowthGPerM2() {
    double seenMm = known().measuredGrowthMmPerDay(cutHeightMm());
    return Double.isNaN(seenMm)
        ? today.recentGrowthGPerM2()
        : seenMm * today.equations().leafGPerM2AndMm();
  }

  Programme.Mowing mowing() {
    return lawn.programme().mowing();
  }

  MowingSeason mowingSeason() {
    return mowingSeason;
  }

  CallRules rules() {
    return basis.rules();
  }

  /** For whom the words are. */
  Reader reader() {
    return basis.reader();
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

  /** Height on a day, mm; that of the last day known for later ones. */
  double heightMm(int day) {
    return heightsMm[Math.min(day, WeatherToCome.DAYS)];
  }

  /** Greatest height up to a day, mm: waiting until drought withers the grass cures nothing. */
  double tallestMm(int day) {
    double tallestMm = 0;
    for (int before = 0; before <= Math.min(day, WeatherToCome.DAYS); before++) {
      tallestMm = Math.max(tallestMm, heightMm(before));
    }
    return tallestMm;
  }

  /** Growth from one day to a later one, mm. */
  double grownMm(int from, int to) {
    return Math.max(0, tallestMm(to) - tallestMm(from));
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

  /** Clump index of a load, for wet or dry grass. */
  double clumpIndex(double dryGPerM2, boolean wet) {
    return clumpIndex(dryGPerM2, wet, false);
  }

  /** The same, perhaps after a second pass that chops and spreads the clippings. */
  double clumpIndex(double dryGPerM2, boolean wet, boolean secondPass) {
    return ClumpRisk.index(
        dryGPerM2,
        passes().thickest(secondPass),
        rules().threshold(wet ? CallRule.CLUMP_LIMIT_WET : CallRule.CLUMP_LIMIT_DRY));
  }

  Passes passes() {
    return new Passes(lawn.ground(), known(), rules());
  }

  Due due() {
    return due;
  }

  DayWeather weather() {
    return weather;
  }

  /** Whether leaves count as wet. */
  WetLeaves leaves() {
    return leaves;
  }

  /** True when leaves count as wet on a day. */
  boolean wet(int day) {
    return leaves.on(day);
  }

  /** True when frost is possible on a day, and does not leave while it is light. */
  boolean frost(int day) {
    return weather.frostLasts(day);
  }

  /** True when grass may be frozen on a day, or was seen to be. */
  boolean frostPossible(int day) {
    return weather.frostPossible(day);
  }

  /** True when the grass can be mown today, but not before some hour. */
  boolean laterToday() {
    return (frostPossible(0) || wetNow()) && !wet(0);
  }

  /** True when the leaves are wet now, by what was seen or by today's rain. */
  boolean wetNow() {
    return leaves.now();
  }

  /** True on a day on which whoever mows can come. */
  boolean visit(int day) {
    return known().facts().visits().possible(date(day));
  }

  /** First day from one on, on which whoever mows can come; -1 when none is in sight. */
  int nextVisit(int from) {
    return nextOf(known().facts().visits(), from);
  }

  int nextOf(Visits visits, int from) {
    return IntStream.rangeClosed(from, from + Visits.LOOK_AHEAD_DAYS)
        .filter(day -> visits.possible(date(day)))
        .findFirst()
        .orElse(-1);
  }

  /** True when the soil is full of water, by weather that was measured. */
  boolean saturated(int day) {
    return basis.measured() && weather.inMost(CallRule.SATURATED, day);
  }

  /** True when rain has softened the ground, by weather that was measured. */
  boolean soft(int day) {
    return basis.measured() && weather.inMost(CallRule.SOFT_GROUND, day);
  }

  boolean hot(int day) {
    return !warmSeasonGrass() && weather.inMost(CallRule.HEAT, day);
  }

  /** Largest share of the height that still counts as a third. */
  double thirdAndTolerance() {
    return rules().threshold(CallRule.ONE_THIRD) + rules().threshold(CallRule.ONE_THIRD_TOLERANCE);
  }

  /** True when a condition holds in more than half of the possible seasons. */
  boolean inMost(IntPredicate holdsInSeason) {
    int count = 0;
    for (int season = 0; season < seasons.size(); season++) {
      count += holdsInSeason.test(season) ? 1 : 0;
    }
    return 2 * count > seasons.size();
  }
}
