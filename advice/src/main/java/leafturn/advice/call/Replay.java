package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.Flows;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Keeper;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.lawn.LawnModel;
import leafturn.model.lawn.LawnParameters;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.LogEntry.Mown;
import leafturn.model.lawn.LogKeeper;
import leafturn.model.lawn.ProgrammeKeeper;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Lives a lawn through the record to the day of a call: spin-up years by its programme, then the
 * record with its log. Spin-up cycles only through whole years that had passed by that day, so that
 * nothing of the days to come enters; a record whose first year has not passed yet lends its first
 * whole year all the same, and the call says so.
 */
final class Replay implements DayListener {
  private static final int SHOWN_DAYS = 90;

  private final LocalDate on;
  private final LocalDate showFrom;
  private final List<LogEntry> log;
  private final FallenCuts fallen;
  private final List<Outlook.PastDay> past = new ArrayList<>();
  private final double[] recentWaterMm = new double[LawnToday.RECENT_DAYS];
  private final LoggedGrowth growth = new LoggedGrowth();
  private @Nullable LocalDate lastMown;

  private Replay(LocalDate on, LocalDate showFrom, List<LogEntry> log, FallenCuts fallen) {
    this.on = on;
    this.showFrom = showFrom;
    this.fallen = fallen;
    this.log = log;
  }

  /**
   * The lawn on a day: as described up to the last logged height, which sets it right, and from
   * there on with the growth that its logged heights tell of.
   *
   * @param log entries from the record's first day up to that day
   * @throws NoCallException when the record does not reach the day
   */
  static LawnToday to(Lawn lawn, SiteClimate climate, List<LogEntry> log, LocalDate on) {
    WeatherSeries weather = climate.weather();
    int today = checkedDay(weather, on);
    int spinUp = spinUpDays(weather, lawn.spinUpYears(), today);
    int cycle = wholeYearsDays(weather, today);
    boolean known = today < weather.days();
    DailyTerms terms = terms(climate, spinUp, cycle, known ? today + 1 : today);
    LocalDate first = weather.firstDay();
    Lawn before = lawn.keptBy(lawn.programmeOn(first));
    LawnEquations described = new LawnEquations(LawnParameters.withCutQuality(before));
    LawnRun spun = new LawnRun(described, LawnModel.startState(before, described), terms);
    spun.live(0, spinUp, new ProgrammeKeeper(before.programme(), described), DayListener.NONE);

    Replay replay = new Replay(on, shownFrom(lawn, on), log, new FallenCuts(on));
    LogKeeper keeper = new LogKeeper(lawn, described, log);
    int measured = Math.min(terms.days(), spinUp + daysToLastHeight(log, weather));
    KeptRun run = new KeptRun(lawn, terms, LawnEquations::new, spun.state(), first);
    run.live(spinUp, measured, keeper, replay);
    boolean heightToday = !known && heightOn(on, log);
    LocalDate then = climate.dayAt(measured - spinUp);
    replay.beforeItsWeather(heightToday, run.on(then), keeper);
    GrowthFactor unmeasured = GrowthFactor.unmeasured(lawn.ground().grass());
    GrowthFactor growth = replay.growth.factor(keeper.corrections(), unmeasured);
    KeptRun grown = new KeptRun(lawn, terms, growth::applied, run.on(then).state(), then);
    LawnRun onward = replay.onward(grown, measured, known, keeper);
    replay.beforeItsWeather(!known && !heightToday, onward, keeper);
    return new LawnToday(
        on,
        known,
        onward.state(),
        onward.equations(),
        List.copyOf(replay.past),
        replay.recentWaterMm,
        known ? weather.value(Quantity.MINIMUM_C, today) : Double.NaN,
        known ? weather.value(Quantity.MAXIMUM_C, today) : Double.NaN,
        replay.lastMown,
        keeper.corrections(),
        growth,
        replay.growth.shown(keeper.corrections(), unmeasured),
        replay.fallen);
  }

  /** Days of the record up to the last height that was logged, that day included. */
  private static int daysToLastHeight(List<LogEntry> log, WeatherSeries weather) {
    return log.stream()
        .filter(Replay::tellsHeight)
        .mapToInt(entry -> Math.max(0, weather.indexOf(entry.day()) + 1))
        .max()
        .orElse(0);
  }

  private static boolean heightOn(LocalDate day, List<LogEntry> log) {
    return log.stream().anyMatch(entry -> entry.day().equals(day) && tellsHeight(entry));
  }

  private static boolean tellsHeight(LogEntry entry) {
    return entry instanceof LogEntry.Measured
        || (entry instanceof Mown mown && !Double.isNaN(mown.heightBeforeMm()));
  }

  /** Lives from the last logged height to the day of the call. */
  private LawnRun onward(KeptRun kept, int from, boolean todayKnown, LogKeeper keeper) {
    int days = kept.run().terms().days();
    int today = Math.max(from, todayKnown ? days - 1 : days);
    kept.live(from, today, keeper, this);
    kept.live(today, days, log.isEmpty() ? unmownToday(keeper) : keeper, this);
    return kept.on(on);
  }

  /** What was done today, whose weather nobody knows yet. */
  private void beforeItsWeather(boolean now, LawnRun run, LogKeeper keeper) {
    double returnedG = run.flow(Flows.RETURNED_G);
    if (now && keeper.beforeItsWeather(run, on)) {
      mown(on, run);
      fallen.fell(on, run.flow(Flows.RETURNED_G) - returnedG, 0, run);
    }
  }

  private void mown(LocalDate day, LawnRun run) {
    lastMown = day;
    boolean logged = log.stream().anyMatch(e -> e instanceof Mown && e.day().equals(day));
    growth.cut(day, logged ? run.heightMm() : Double.NaN);
  }

  private static int checkedDay(WeatherSeries weather, LocalDate on) {
    int today = weather.indexOf(on);
    if (today < 1) {
      throw new NoCallException(
          "the day asked for is %s, but must lie on %s or later, the day after the weather record begins"
              .formatted(on, weather.firstDay().plusDays(1)));
    }
    if (today > weather.days()) {
      throw new NoCallException(
          "the day asked for is %s, but must lie on %s or earlier, the day after the weather record ends"
              .formatted(on, weather.lastDay().plusDays(1)));
    }
    return today;
  }

  /** First day of the season figure: the season's start, and some months at least. */
  private static LocalDate shownFrom(Lawn lawn, LocalDate on) {
    MowingSeason season = new MowingSeason(lawn.programme().mowing());
    LocalDate shown = on.minusDays(SHOWN_DAYS);
    LocalDate start = season.startBefore(on);
    return season.contains(on) && start.isBefore(shown) ? start : shown;
  }

  /** Without a log the programme stands in, but whether it mows today is what the call is about. */
  private static Keeper unmownToday(Keeper keeper) {
    return new Keeper() {
      @Override
      public void morning(LawnRun run) {
        keeper.morning(run);
      }

      @Override
      public void evening(LawnRun run) {
        // nothing is cut before the call is made
      }
    };
  }

  /** True when the record's first year had not passed by the day, so that spin-up borrows it. */
  static boolean borrowsItsFirstYear(Lawn lawn, WeatherSeries weather, LocalDate on) {
    return lawn.spinUpYears() > 0 && weather.firstDay().plusYears(1).isAfter(on.plusDays(1));
  }

  /** Days of the whole years from the record's first day that had passed, at least one year. */
  private static int wholeYearsDays(WeatherSeries weather, int today) {
    int years = 1;
    while (yearStart(weather, years + 1) <= today + 1) {
      years++;
    }
    return yearStart(weather, years);
  }

  private static int spinUpDays(WeatherSeries weather, int spinUpYears, int today) {
    int cycle = wholeYearsDays(weather, today);
    if (spinUpYears > 0 && cycle > weather.days()) {
      throw new NoCallException(
          "spin-up needs a whole year of weather, but the record runs from %s to %s; give a longer record or set spinUpYears to 0"
              .formatted(weather.firstDay(), weather.lastDay()));
    }
    int days = 0;
    int year = 0;
    for (int count = 0; count < spinUpYears; count++) {
      days += yearStart(weather, year + 1) - yearStart(weather, year);
      year = yearStart(weather, year + 1) >= cycle ? 0 : year + 1;
    }
    return days;
  }

  private static int yearStart(WeatherSeries weather, int year) {
    return weather.indexOf(weather.firstDay().plusYears(year));
  }

  private static DailyTerms terms(
      SiteClimate climate, int spinUpDays, int cycleDays, int recordDays) {
    LocalDate[] dates = new LocalDate[spinUpDays + recordDays];
    int[] sources = new int[dates.length];
    for (int day = 0; day < dates.length; day++) {
      sources[day] = day < spinUpDays ? day % cycleDays : day - spinUpDays;
      dates[day] = climate.dayAt(sources[day]);
    }
    return new DailyTerms(climate, dates, sources, Double.NaN);
  }

  @Override
  public void dayDone(LawnRun run) {
    fallen.dayDone(run);
    boolean mown = run.flow(Flows.MOWINGS) > 0;
    System.arraycopy(recentWaterMm, 1, recentWaterMm, 0, recentWaterMm.length - 1);
    LocalDate day = run.terms().date(run.day());
    recentWaterMm[recentWaterMm.length - 1] = run.flow(Flows.RAIN_MM) + wateredMm(day);
    if (mown) {
      mown(day, run);
    }
    if (!day.isBefore(showFrom)) {
      past.add(
          new Outlook.PastDay(
              day,
              run.heightMm(),
              mown ? run.flow(Flows.HEIGHT_BEFORE_MM) : Double.NaN,
              run.flow(Flows.RAIN_MM),
              run.flow(Flows.ROOT_ZONE_WATER),
              run.flow(Flows.LEAF_GROWTH_G),
              mown ? run.flow(Flows.RETURNED_SHARE) : Double.NaN));
    }
  }

  /** Watering that was logged; nobody knows on which day a programme's sprinklers really ran. */
  private double wateredMm(LocalDate day) {
    double sum = 0;
    for (LogEntry entry : log) {
      if (entry instanceof LogEntry.Watered watered && watered.day().equals(day)) {
        sum += watered.waterMm();
      }
    }
    return sum;
  }
}
