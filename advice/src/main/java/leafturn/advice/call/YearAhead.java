package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.DayListener;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LawnRun;
import leafturn.model.lawn.ProgrammeKeeper;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import org.jspecify.annotations.Nullable;

/**
 * Thatch a year from now if every mowing were as a choice has it, all clippings returned or all
 * collected, mown and fed by the programme. Few years of the record stand in for the year to come:
 * thatch moves so slowly that more would not change what is shown.
 */
final class YearAhead {
  /** Most years of the record that stand in. */
  static final int MOST_YEARS = 12;

  private static final int DAYS = 365;

  private final Lawn lawn;
  private final LawnToday today;
  private final List<DailyTerms> years;
  private final double thirdFraction;
  private @Nullable ThatchInAYear returned;
  private @Nullable ThatchInAYear collected;

  /**
   * @param rules whose one-third rule the programme mows by, where it is one of that rule
   */
  YearAhead(Lawn lawn, LawnToday today, SiteClimate climate, CallRules rules) {
    this.lawn = lawn;
    this.today = today;
    this.years = years(today, climate);
    this.thirdFraction = rules.threshold(CallRule.ONE_THIRD);
  }

  /** Thatch a year from now; null where no year of weather is on record. */
  @Nullable ThatchInAYear thatch(boolean allReturned) {
    if (years.isEmpty()) {
      return null;
    }
    if (returned == null) {
      returned = run(1);
      collected = run(0);
    }
    return allReturned ? returned : collected;
  }

  private ThatchInAYear run(double returnedShare) {
    double[] thatchMm = new double[years.size()];
    for (int year = 0; year < thatchMm.length; year++) {
      LawnRun run = new LawnRun(today.equations(), today.state(), years.get(year));
      run.live(
          0,
          DAYS,
          new ProgrammeKeeper(
              lawn.programme(),
              today.equations(),
              (before, toHeightMm) -> returnedShare,
              false,
              thirdFraction),
          DayListener.NONE);
      thatchMm[year] = run.thatchMm();
    }
    return new ThatchInAYear(Spread.of(thatchMm), thatchMm.length);
  }

  /** The year to come with the weather of the latest years on record, the latest first. */
  private static List<DailyTerms> years(LawnToday today, SiteClimate climate) {
    WeatherSeries weather = climate.weather();
    List<DailyTerms> years = new ArrayList<>();
    LocalDate first = today.firstDayToCome();
    int latest = climate.dayAt(climate.measuredDays() - 1).getYear();
    for (int year = latest; years.size() < MOST_YEARS; year--) {
      LocalDate start = first.plusYears(year - first.getYear());
      if (start.isBefore(weather.firstDay())) {
        break;
      }
      if (year == first.getYear()) {
        continue;
      }
      int[] sources = sources(climate, start, weather.indexOf(today.on()));
      if (sources.length == DAYS) {
        LocalDate[] dates = new LocalDate[DAYS];
        Arrays.setAll(dates, first::plusDays);
        years.add(new DailyTerms(climate, dates, sources, today.state().soilC()));
      }
    }
    return years;
  }

  /**
   * A year of measured days from a date on. What was not measured, or is the year after the day of
   * the call itself, is taken from the latest year before; fewer days where there is none.
   */
  private static int[] sources(SiteClimate climate, LocalDate start, int today) {
    WeatherSeries weather = climate.weather();
    int[] sources = new int[DAYS];
    for (int day = 0; day < DAYS; day++) {
      LocalDate wanted = start.plusDays(day);
      int source = weather.indexOf(wanted);
      while (source >= 0
          && (source >= climate.measuredDays() || source > today && source <= today + DAYS)) {
        wanted = wanted.minusYears(1);
        source = weather.indexOf(wanted);
      }
      if (source < 0) {
        return Arrays.copyOf(sources, day);
      }
      sources[day] = source;
    }
    return sources;
  }
}
