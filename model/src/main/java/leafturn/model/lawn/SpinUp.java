package leafturn.model.lawn;

import java.time.LocalDate;
import leafturn.model.weather.WeatherSeries;

/**
 * The days of a run: spin-up years that cycle through the record's years from its first day, then
 * the record itself.
 */
public final class SpinUp {
  private SpinUp() {}

  /** Number of spin-up days that {@link #terms} puts before the record. */
  public static int days(WeatherSeries weather, int spinUpYears) {
    int days = 0;
    int whole = wholeYears(weather, spinUpYears);
    for (int year = 0; year < spinUpYears; year++) {
      days += start(weather, year % whole + 1) - start(weather, year % whole);
    }
    return days;
  }

  /**
   * Spin-up days followed by the record's days.
   *
   * @param recordDays days of the record to run after the spin-up
   * @throws IllegalArgumentException when years are to be cycled and the record has not even one
   */
  public static DailyTerms terms(SiteClimate climate, int spinUpYears, int recordDays) {
    WeatherSeries weather = climate.weather();
    int before = days(weather, spinUpYears);
    LocalDate[] dates = new LocalDate[before + recordDays];
    int[] sources = new int[before + recordDays];
    int day = 0;
    for (int year = 0; year < spinUpYears; year++) {
      int cycled = year % wholeYears(weather, spinUpYears);
      for (int source = start(weather, cycled); source < start(weather, cycled + 1); source++) {
        sources[day++] = source;
      }
    }
    for (int source = 0; source < recordDays; source++) {
      sources[day++] = source;
    }
    for (int i = 0; i < dates.length; i++) {
      dates[i] = climate.dayAt(sources[i]);
    }
    return new DailyTerms(climate, dates, sources, Double.NaN);
  }

  private static int start(WeatherSeries weather, int year) {
    return weather.indexOf(weather.firstDay().plusYears(year));
  }

  private static int wholeYears(WeatherSeries weather, int spinUpYears) {
    int years = 0;
    while (start(weather, years + 1) <= weather.days()) {
      years++;
    }
    if (years == 0 && spinUpYears > 0) {
      throw new IllegalArgumentException(
          "spin-up needs a whole year of weather, but the record runs from %s to %s; give a longer record or set spinUpYears to 0"
              .formatted(weather.firstDay(), weather.lastDay()));
    }
    return Math.max(1, years);
  }
}
