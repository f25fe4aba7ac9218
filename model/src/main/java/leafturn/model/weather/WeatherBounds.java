package leafturn.model.weather;

import leafturn.quantity.Range;

/**
 * What weather on Earth can be; wide enough for every station, narrow enough to catch a wrong unit.
 */
final class WeatherBounds {
  static final Range AIR_TEMPERATURE = new Range("air temperature", -90, 60, "°C");
  static final Range VAPOUR_PRESSURE = new Range("vapour pressure", 0, 25, "kPa");
  static final Range RAIN = new Range("rain", 0, 2000, "mm");
  static final Range RELATIVE_HUMIDITY = new Range("relative humidity", 0, 100, "%");
  static final Range PRESSURE = new Range("air pressure", 20, 115, "kPa");
  static final Range ELEVATION = new Range("elevation", -430, 8850, "m");
  static final Range LATITUDE = new Range("latitude", -90, 90, "°");
  static final Range DAY_OF_YEAR = new Range("day of the year", 1, 366, "");
  static final Range WIND = new Range("wind speed", 0, 115, "m/s");
  static final Range WIND_HEIGHT = new Range("wind height", 0.5, 100, "m");
  static final Range RADIATION = new Range("global radiation", 0, 60, "MJ/m2");
  static final Range FRACTION = new Range("fraction", 0, 1, "");
  static final Range NET_RADIATION = new Range("net radiation", -60, 60, "MJ/m2");
  static final Range PSYCHROMETRIC = new Range("psychrometric constant", 0.01, 0.08, "kPa/°C");
  static final Range BULK_DENSITY = new Range("bulk density", 0.05, 2.2, "g/cm3");
  static final Range SUNSHINE = new Range("sunshine", 0, 24, "h");

  private WeatherBounds() {}

  /** What a measured quantity of a day can be. */
  static Range of(WeatherSeries.Quantity quantity) {
    return switch (quantity) {
      case MINIMUM_C, MAXIMUM_C, DEW_POINT_C -> AIR_TEMPERATURE;
      case RAIN_MM -> RAIN;
      case WIND_M_PER_S -> WIND;
      case HUMIDITY_MAXIMUM_PERCENT, HUMIDITY_MINIMUM_PERCENT -> RELATIVE_HUMIDITY;
      case RADIATION_MJ_PER_M2 -> RADIATION;
    };
  }

  /** Refuses a day whose minimum lies above its maximum. */
  static void temperatures(double minimumC, double maximumC) {
    AIR_TEMPERATURE.checked(minimumC);
    AIR_TEMPERATURE.checked(maximumC);
    if (minimumC > maximumC) {
      throw new IllegalArgumentException(
          "the minimum temperature is %s °C, above the maximum of %s °C"
              .formatted(minimumC, maximumC));
    }
  }
}
