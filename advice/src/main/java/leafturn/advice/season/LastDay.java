package leafturn.advice.season;

import leafturn.advice.call.DryHours;
import leafturn.model.weather.Humidity;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.hourly.GrassDay;
import leafturn.model.weather.hourly.GrassHours;
import leafturn.model.weather.hourly.LeafWetness;
import leafturn.quantity.Units;

/**
 * The hours of a record's last day: when the grass was dry enough, and how long leaves were wet by
 * three methods that know nothing of each other.
 *
 * @param hours when the grass was dry enough
 * @param wetByBalanceHours wet hours by the water on the leaves and the air's moisture
 * @param wetByHumidityHours wet hours by relative humidity alone, 90 % or more; knows no rain
 * @param wetByTreeHours wet hours by the regression tree; knows no rain
 */
public record LastDay(
    DryHours hours, double wetByBalanceHours, int wetByHumidityHours, int wetByTreeHours) {

  static LastDay of(WeatherSeries weather, Site site) {
    int index = weather.days() - 1;
    GrassDay day = GrassHours.recorded(weather, site, index).today();
    double balance = 0;
    int humid = 0;
    int tree = 0;
    for (int hour = 0; hour < 24; hour++) {
      double humidity = day.humidityPercent(hour);
      balance += 1 - day.dryFraction(hour);
      humid += LeafWetness.wetByHumidity(humidity, LeafWetness.WET_HUMIDITY_PERCENT) ? 1 : 0;
      tree += wetByTree(day, hour) ? 1 : 0;
    }
    return new LastDay(DryHours.recorded(weather, site, index, Units.METRIC), balance, humid, tree);
  }

  private static boolean wetByTree(GrassDay day, int hour) {
    double temperatureC = day.temperatureC(hour);
    double humidity = day.humidityPercent(hour);
    double vapourKPa = humidity / 100 * Humidity.saturationVapourPressureKPa(temperatureC);
    double depressionC =
        vapourKPa > 0 ? Math.max(0, temperatureC - Humidity.dewPointC(vapourKPa)) : temperatureC;
    return LeafWetness.wetByTree(temperatureC, humidity, day.windMPerS(hour), depressionC);
  }
}
