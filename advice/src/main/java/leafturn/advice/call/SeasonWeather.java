package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.model.weather.hourly.DayWeather;

/**
 * Weather of a site that may come, shared by all its lawns.
 *
 * @param terms its days from the first that is not known
 * @param minimumC minimum air temperature of each day, °C
 * @param maximumC maximum air temperature of each day, °C
 * @param firstDays the days whose hours are looked at
 */
record SeasonWeather(
    DailyTerms terms, double[] minimumC, double[] maximumC, List<DayWeather> firstDays) {
  private static final int DAYS_WITH_HOURS = 2;

  /**
   * Days of a climate under other dates.
   *
   * @param first date of the first day
   * @param sources for each day the day of the climate it is taken from
   * @param soilC soil temperature on the eve, °C
   */
  static SeasonWeather of(SiteClimate climate, LocalDate first, int[] sources, double soilC) {
    LocalDate[] dates = new LocalDate[sources.length];
    double[] minimumC = new double[sources.length];
    double[] maximumC = new double[sources.length];
    List<DayWeather> firstDays = new ArrayList<>();
    for (int day = 0; day < sources.length; day++) {
      int source = sources[day];
      dates[day] = first.plusDays(day);
      minimumC[day] = climate.weather().value(Quantity.MINIMUM_C, source);
      maximumC[day] = climate.weather().value(Quantity.MAXIMUM_C, source);
      if (day < DAYS_WITH_HOURS) {
        firstDays.add(
            DayWeather.of(climate.weather(), climate.site(), source, climate.radiationMj(source)));
      }
    }
    return new SeasonWeather(
        new DailyTerms(climate, dates, sources, soilC), minimumC, maximumC, firstDays);
  }
}
