package leafturn.records;

import java.util.EnumMap;
import java.util.Map;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Range;

/** What daily weather on Earth can be, to catch wrong units and codes for missing values. */
public final class WeatherLimits {
  private static final Map<Quantity, Range> LIMITS = limits();

  private WeatherLimits() {}

  /** The range a quantity may take. */
  public static Range of(Quantity quantity) {
    Range range = LIMITS.get(quantity);
    if (range == null) {
      throw new IllegalArgumentException("there are no limits for " + quantity);
    }
    return range;
  }

  private static Map<Quantity, Range> limits() {
    Map<Quantity, Range> limits = new EnumMap<>(Quantity.class);
    limits.put(Quantity.MAXIMUM_C, new Range("the maximum temperature", -90, 60, "°C"));
    limits.put(Quantity.MINIMUM_C, new Range("the minimum temperature", -90, 60, "°C"));
    limits.put(Quantity.RAIN_MM, new Range("the rain", 0, 2000, "mm"));
    limits.put(Quantity.WIND_M_PER_S, new Range("the wind", 0, 115, "m/s"));
    limits.put(Quantity.HUMIDITY_MAXIMUM_PERCENT, new Range("the humidity", 1, 100, "%"));
    limits.put(Quantity.HUMIDITY_MINIMUM_PERCENT, new Range("the humidity", 0, 100, "%"));
    limits.put(Quantity.DEW_POINT_C, new Range("the dew point", -90, 60, "°C"));
    limits.put(Quantity.RADIATION_MJ_PER_M2, new Range("the radiation", 0, 60, "MJ/m²"));
    return limits;
  }
}
