package leafturn.advice.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.SiteClimate;

/**
 * The weather that all programmes of a plan meet, day by day the same. A plan's year has 365 days
 * from 1 January, south of the equator from 1 July.
 *
 * @param before years of the record: first those in which the lawn is kept as it is now, then those
 *     in which a programme settles
 * @param presentDays days of the first
 * @param years possible seasons, a year each, after the settling
 * @param longRuns possible seasons of several years, from the lawn as it is now
 * @param recordYears years of the record that {@code before} cycles through
 */
record PlanWeather(
    DailyTerms before,
    int presentDays,
    List<DailyTerms> years,
    List<DailyTerms> longRuns,
    List<Integer> recordYears) {
  static final int DAYS = 365;

  /** Years a programme is kept before the year that is reported: its effects need them to show. */
  static final int SETTLING_YEARS = 2;

  /** Years over which thatch is followed. */
  static final int LONG_YEARS = 5;

  /** Possible seasons of those. */
  static final int LONG_RUNS = 10;

  /** Any common year: days stand under its dates, whatever year they come from. */
  private static final int STAND_IN_YEAR = 2001;

  /**
   * Possible seasons put together from months of the record, each month from a year drawn by the
   * seed.
   *
   * @param presentYears years in which the lawn is kept as it is now, 0 or more
   * @param seasons number of possible seasons of a year
   * @throws NoPlanException when the record holds no whole year
   */
  static PlanWeather resampled(SiteClimate climate, int presentYears, int seasons, long seed) {
    List<Integer> starts = starts(climate);
    LocalDate first = firstDay(climate);
    int[] before = new int[(presentYears + SETTLING_YEARS) * DAYS];
    for (int day = 0; day < before.length; day++) {
      int start = starts.get(day / DAYS % starts.size());
      before[day] = source(climate, start, day % DAYS);
    }
    DailyTerms past = new DailyTerms(climate, dates(first, before.length), before, Double.NaN);
    int presentDays = presentYears * DAYS;
    double nowC = presentDays == 0 ? Double.NaN : past.soilC(presentDays - 1);
    double settledC = past.soilC(before.length - 1);
    SplittableRandom random = new SplittableRandom(seed);
    List<DailyTerms> years = new ArrayList<>();
    for (int season = 0; season < seasons; season++) {
      years.add(drawn(climate, starts, random.split(), 1, settledC));
    }
    List<DailyTerms> longRuns = new ArrayList<>();
    for (int season = 0; season < LONG_RUNS; season++) {
      longRuns.add(drawn(climate, starts, random.split(), LONG_YEARS, nowC));
    }
    List<Integer> recordYears =
        starts.stream().map(start -> climate.dayAt(start).getYear()).toList();
    return new PlanWeather(past, presentDays, years, longRuns, recordYears);
  }

  private static DailyTerms drawn(
      SiteClimate climate,
      List<Integer> starts,
      SplittableRandom random,
      int lengthYears,
      double soilC) {
    LocalDate[] dates = dates(firstDay(climate), lengthYears * DAYS);
    int[] sources = new int[dates.length];
    int start = 0;
    for (int day = 0; day < dates.length; day++) {
      if (dates[day].getDayOfMonth() == 1) {
        start = starts.get(random.nextInt(starts.size()));
      }
      sources[day] = source(climate, start, day % DAYS);
    }
    return new DailyTerms(climate, dates, sources, soilC);
  }

  /** First days of the plan's years that lie wholly in the record. */
  private static List<Integer> starts(SiteClimate climate) {
    LocalDate first = climate.weather().firstDay();
    List<Integer> starts = new ArrayList<>();
    LocalDate begin = firstDay(climate).withYear(first.getYear());
    for (LocalDate day = begin; ; day = day.plusYears(1)) {
      int start = climate.weather().indexOf(day);
      int end = climate.weather().indexOf(day.plusYears(1));
      if (end > climate.measuredDays()) {
        break;
      }
      if (!day.isBefore(first)) {
        starts.add(start);
      }
    }
    if (starts.isEmpty()) {
      throw new NoPlanException(
          "a plan needs weather of a whole year from %s, but the record runs from %s to %s"
              .formatted(
                  southern(climate) ? "1 July to 30 June" : "1 January to 31 December",
                  first,
                  climate.dayAt(climate.measuredDays() - 1)));
    }
    return starts;
  }

  /** The record's day for a day of the plan's year; 29 February is passed over. */
  private static int source(SiteClimate climate, int start, int dayOfPlan) {
    int leapDay = start + dayOfPlan;
    LocalDate begin = climate.dayAt(start);
    LocalDate february = LocalDate.of(begin.getYear() + (southern(climate) ? 1 : 0), 2, 28);
    boolean leap = february.isLeapYear();
    return leap && climate.dayAt(leapDay).isAfter(february) ? leapDay + 1 : leapDay;
  }

  private static LocalDate[] dates(LocalDate first, int days) {
    LocalDate[] dates = new LocalDate[days];
    for (int day = 0; day < days; day++) {
      dates[day] = first.plusDays(day % DAYS);
    }
    return dates;
  }

  private static LocalDate firstDay(SiteClimate climate) {
    return LocalDate.of(STAND_IN_YEAR, southern(climate) ? 7 : 1, 1);
  }

  private static boolean southern(SiteClimate climate) {
    return climate.site().latitudeDeg() < 0;
  }
}
