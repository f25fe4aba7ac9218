package leafturn.advice.call;

import leafturn.model.lawn.DailyTerms;
import leafturn.model.lawn.LawnEquations;
import leafturn.model.weather.hourly.DayWeather;

/**
 * A season that may come for one lawn: weather, and what is uncertain in the lawn's own equations.
 *
 * @param weather the weather from the first day that is not known
 * @param equations the lawn's, with parameters drawn within their ranges
 */
record PossibleSeason(SeasonWeather weather, LawnEquations equations) {

  DailyTerms terms() {
    return weather.terms();
  }

  double minimumC(int day) {
    return weather.minimumC()[day];
  }

  double maximumC(int day) {
    return weather.maximumC()[day];
  }

  /** Weather of one of the first two days, for its hours. */
  DayWeather dayWeather(int day) {
    return weather.firstDays().get(day);
  }

  double airDecay(int day) {
    return weather.terms().airDecay(day);
  }

  int days() {
    return weather.terms().days();
  }
}
