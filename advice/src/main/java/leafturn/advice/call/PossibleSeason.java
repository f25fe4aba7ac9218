package leafturn.advice.call;

import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.model.weather.hourly.DayWeather;

/**
 * Weather that may come after the day of a call, taken from another year of the record.
 *
 * @param climate the record
 * @param terms its days under the dates they stand in for
 * @param sources for each day the day of the record it is taken from
 */
record PossibleSeason(SiteClimate climate, DailyTerms terms, int[] sources) {

  double minimumC(int day) {
    return climate.weather().value(Quantity.MINIMUM_C, sources[day]);
  }

  double maximumC(int day) {
    return climate.weather().value(Quantity.MAXIMUM_C, sources[day]);
  }

  /** A day's weather for its hours. */
  DayWeather dayWeather(int day) {
    int source = sources[day];
    return DayWeather.of(climate.weather(), climate.site(), source, climate.radiationMj(source));
  }

  double airDecay(int day) {
    return climate.airDecay(sources[day]);
  }

  int days() {
    return sources.length;
  }
}
