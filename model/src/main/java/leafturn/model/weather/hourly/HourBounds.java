package leafturn.model.weather.hourly;

import leafturn.quantity.Range;

/** What an hour can be; wide enough for every site. */
final class HourBounds {
  static final Range TEMPERATURE = new Range("air temperature", -90, 60, "°C");
  static final Range HUMIDITY = new Range("relative humidity", 0, 100, "%");
  static final Range VAPOUR_PRESSURE = new Range("vapour pressure", 0, 25, "kPa");
  static final Range WIND = new Range("wind speed", 0, 115, "m/s");
  static final Range NET_RADIATION = new Range("net radiation of an hour", -1, 5, "MJ/m2");
  static final Range DAYLENGTH = new Range("daylength", 0, 24, "h");
  static final Range HOUR = new Range("hour", 0, 24, "h");
  static final Range FRACTION = new Range("fraction", 0, 1, "");
  static final Range WATER = new Range("water", 0, 2000, "mm");

  private HourBounds() {}
}
