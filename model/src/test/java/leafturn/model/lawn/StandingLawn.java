package leafturn.model.lawn;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** A lawn under weather that is the same every day, for what can be worked out by hand. */
final class StandingLawn {
  static final Keeper NOBODY =
      new Keeper() {
        @Override
        public void morning(LawnRun run) {}

        @Override
        public void evening(LawnRun run) {}
      };

  private StandingLawn() {}

  /** Days of one temperature and rain. */
  static WeatherSeries weather(LocalDate first, int days, double temperatureC, double rainMm) {
    return new WeatherSeries(
        first,
        Map.of(
            Quantity.MINIMUM_C, same(days, temperatureC - 5),
            Quantity.MAXIMUM_C, same(days, temperatureC + 5),
            Quantity.RAIN_MM, same(days, rainMm),
            Quantity.WIND_M_PER_S, same(days, 2)));
  }

  private static double[] same(int days, double value) {
    double[] values = new double[days];
    Arrays.fill(values, value);
    return values;
  }

  static DailyTerms terms(WeatherSeries weather, double latitudeDeg) {
    return DailyTerms.asRecorded(
        new SiteClimate(weather, Site.at(latitudeDeg, 40)), 0, weather.days(), Double.NaN);
  }

  /** Tall fescue with changed parameters, at 20 °C and in water, from 1 May. */
  static LawnRun run(Map<String, Double> parameters, int days) {
    LawnEquations equations =
        new LawnEquations(Parameters.of(Species.TALL_FESCUE).with(parameters));
    return new LawnRun(
        equations,
        LawnModel.startState(equations, 76),
        terms(weather(LocalDate.of(2013, 5, 1), days, 20, 40), 40.78));
  }
}
