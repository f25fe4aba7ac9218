package leafturn.advice.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.RandomStream;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.generator.WeatherEve;
import leafturn.model.weather.generator.WeatherGenerator;

/**
 * The weather that all programmes of a plan meet, day by day the same. A plan's year begins on 1
 * January, south of the equator on 1 July.
 *
 * @param before years of the record: first those in which the lawn is kept as it is now, then those
 *     in which a programme settles
 * @param presentDays days of the first
 * @param years possible seasons, a year each, after the settling
 * @param longRuns possible seasons of several years, from the lawn as it is now
 * @param source what they were made from
 */
record PlanWeather(
    DailyTerms before,
    int presentDays,
    List<DailyTerms> years,
    List<DailyTerms> longRuns,
    Source source) {
  /** Years a programme is kept before the year that is reported: its effects need them to show. */
  static final int SETTLING_YEARS = 2;

  /** Years over which thatch is followed. */
  static final int LONG_YEARS = 5;

  /** Possible seasons of those. */
  static final int LONG_RUNS = 10;

  /** Days of a plan's year. */
  static final int DAYS = 365;

  /** Any year that is no leap year, and whose next is none. */
  private static final int STAND_IN_YEAR = 2001;

  /** Streams of the long runs, apart from those of the years. */
  private static final long FIRST_LONG_STREAM = 1_000_000;

  /**
   * @param recordYears whole years of the record, by the year they begin in
   * @param notes what the record was too short for, in sentences
   */
  record Source(List<Integer> recordYears, List<String> notes) {}

  /**
   * Possible seasons generated like the site's record.
   *
   * @param presentYears years in which the lawn is kept as it is now, 0 or more
   * @param draws number of possible seasons of a year, and their seed
   * @throws NoPlanException when the record holds no whole year
   */
  static PlanWeather like(SiteClimate climate, int presentYears, PlanRequest.Draws draws) {
    List<Integer> starts = starts(climate);
    DailyTerms before = before(climate, starts, presentYears + SETTLING_YEARS);
    int presentDays = presentYears * DAYS;
    double nowC = presentDays == 0 ? Double.NaN : before.soilC(presentDays - 1);
    double settledC = before.soilC(before.days() - 1);
    WeatherGenerator generator = WeatherGenerator.fitted(climate.weather());
    LocalDate first = firstDay(climate.site());
    List<DailyTerms> years = new ArrayList<>();
    for (int season = 0; season < draws.seasons(); season++) {
      RandomStream random = new RandomStream(draws.seed(), season);
      years.add(
          terms(generator.generate(random, WeatherEve.unknown(), first, DAYS), climate, settledC));
    }
    int longDays = daysOf(LONG_YEARS, climate.site());
    List<DailyTerms> longRuns = new ArrayList<>();
    for (int season = 0; season < LONG_RUNS; season++) {
      RandomStream random = new RandomStream(draws.seed(), FIRST_LONG_STREAM + season);
      longRuns.add(
          terms(generator.generate(random, WeatherEve.unknown(), first, longDays), climate, nowC));
    }
    List<Integer> recordYears =
        starts.stream().map(start -> climate.dayAt(start).getYear()).toList();
    return new PlanWeather(
        before, presentDays, years, longRuns, new Source(recordYears, generator.notes()));
  }

  private static DailyTerms terms(WeatherSeries weather, SiteClimate record, double soilC) {
    SiteClimate climate = new SiteClimate(weather, record.site());
    return DailyTerms.asRecorded(climate, 0, weather.days(), soilC);
  }

  /** Days of so many years from the first day of a plan. */
  static int daysOf(int years, Site site) {
    LocalDate first = firstDay(site);
    return Math.toIntExact(ChronoUnit.DAYS.between(first, first.plusYears(years)));
  }

  /** Whole years of the record, over and over, each of 365 days. */
  private static DailyTerms before(SiteClimate climate, List<Integer> starts, int years) {
    int[] sources = new int[years * DAYS];
    LocalDate[] dates = new LocalDate[sources.length];
    for (int day = 0; day < sources.length; day++) {
      sources[day] = source(climate, starts.get(day / DAYS % starts.size()), day % DAYS);
      dates[day] = firstDay(climate.site()).plusDays(day % DAYS);
    }
    return new DailyTerms(climate, dates, sources, Double.NaN);
  }

  /** First days of the plan's years that lie wholly in the record. */
  private static List<Integer> starts(SiteClimate climate) {
    WeatherSeries weather = climate.weather();
    List<Integer> starts = new ArrayList<>();
    LocalDate day = firstDay(climate.site()).withYear(weather.firstDay().getYear());
    for (; weather.indexOf(day.plusYears(1)) <= climate.measuredDays(); day = day.plusYears(1)) {
      if (!day.isBefore(weather.firstDay())) {
        starts.add(weather.indexOf(day));
      }
    }
    if (starts.isEmpty()) {
      throw new NoPlanException(
          NoPlanException.Where.WEATHER,
          "a plan needs weather of a whole year from %s, but the record runs from %s to %s"
              .formatted(
                  southern(climate.site()) ? "1 July to 30 June" : "1 January to 31 December",
                  weather.firstDay(),
                  climate.dayAt(climate.measuredDays() - 1)));
    }
    return starts;
  }

  /** The record's day for a day of the plan's year; 29 February is passed over. */
  private static int source(SiteClimate climate, int start, int dayOfPlan) {
    int source = start + dayOfPlan;
    int year = climate.dayAt(start).getYear() + (southern(climate.site()) ? 1 : 0);
    LocalDate february = LocalDate.of(year, 2, 28);
    boolean beyond = february.isLeapYear() && climate.dayAt(source).isAfter(february);
    return beyond ? source + 1 : source;
  }

  private static LocalDate firstDay(Site site) {
    return LocalDate.of(STAND_IN_YEAR, southern(site) ? 7 : 1, 1);
  }

  private static boolean southern(Site site) {
    return site.latitudeDeg() < 0;
  }
}
