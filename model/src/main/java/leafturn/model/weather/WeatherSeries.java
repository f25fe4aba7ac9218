package leafturn.model.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;
import leafturn.quantity.Range;

/**
 * Daily weather of one place without a missing day. NaN stands for a value that was not measured;
 * minimum and maximum temperature and rain are always there.
 */
public final class WeatherSeries {

  /** A measured quantity of the day and its unit. */
  public enum Quantity {
    /** Minimum air temperature, °C. */
    MINIMUM_C,
    /** Maximum air temperature, °C. */
    MAXIMUM_C,
    /** Rain and melted snow, mm. */
    RAIN_MM,
    /** Mean wind speed at the site's wind height, m/s. */
    WIND_M_PER_S,
    /** Maximum relative humidity, %. */
    HUMIDITY_MAXIMUM_PERCENT,
    /** Minimum relative humidity, %. */
    HUMIDITY_MINIMUM_PERCENT,
    /** Mean dew point, °C. */
    DEW_POINT_C,
    /** Global radiation, MJ/m2. */
    RADIATION_MJ_PER_M2
  }

  private final LocalDate firstDay;
  private final int days;
  private final Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);

  /**
   * @param firstDay day of the first value
   * @param values per quantity one value a day, NaN where not measured; all of one length; minimum,
   *     maximum and rain are required and complete
   * @throws IllegalArgumentException naming the quantity and day that break this
   */
  public WeatherSeries(LocalDate firstDay, Map<Quantity, double[]> values) {
    this.firstDay = firstDay;
    double[] minimum = required(values, Quantity.MINIMUM_C);
    this.days = minimum.length;
    values.forEach((quantity, column) -> this.values.put(quantity, checked(quantity, column)));
    double[] maximum = required(values, Quantity.MAXIMUM_C);
    double[] rain = required(values, Quantity.RAIN_MM);
    for (int day = 0; day < days; day++) {
      if (!(minimum[day] <= maximum[day]) || !(rain[day] >= 0)) {
        throw new IllegalArgumentException(
            "the weather of %s needs minimum <= maximum temperature and rain >= 0, but has %s to %s °C and %s mm"
                .formatted(dayAt(day), minimum[day], maximum[day], rain[day]));
      }
    }
  }

  private static double[] required(Map<Quantity, double[]> values, Quantity quantity) {
    double[] column = values.get(quantity);
    if (column == null || column.length == 0) {
      throw new IllegalArgumentException("the weather has no values of " + quantity);
    }
    return column;
  }

  private double[] checked(Quantity quantity, double[] column) {
    if (column.length != days) {
      throw new IllegalArgumentException(
          quantity + " has " + column.length + " days, the other quantities " + days);
    }
    Range bounds = WeatherBounds.of(quantity);
    for (int day = 0; day < days; day++) {
      if (!Double.isNaN(column[day]) && !bounds.contains(column[day])) {
        throw new IllegalArgumentException(
            "the weather of %s: %s".formatted(dayAt(day), bounds.fault(column[day])));
      }
    }
    return column.clone();
  }

  /** First day of the series. */
  public LocalDate firstDay() {
    return firstDay;
  }

  /** Last day of the series. */
  public LocalDate lastDay() {
    return dayAt(days - 1);
  }

  /** Number of days. */
  public int days() {
    return days;
  }

  /** The date of the day with this index, 0 for the first. */
  public LocalDate dayAt(int index) {
    return firstDay.plusDays(index);
  }

  /** Index of a date; outside 0 to {@link #days()} - 1 when the date is not in the series. */
  public int indexOf(LocalDate date) {
    return Math.toIntExact(ChronoUnit.DAYS.between(firstDay, date));
  }

  /** Value of a quantity on a day, NaN where it was not measured. */
  public double value(Quantity quantity, int index) {
    double[] column = values.get(quantity);
    return column == null ? Double.NaN : column[index];
  }

  /** True when at least one day has a value of this quantity. */
  public boolean has(Quantity quantity) {
    double[] column = values.get(quantity);
    if (column == null) {
      return false;
    }
    for (double value : column) {
      if (!Double.isNaN(value)) {
        return true;
      }
    }
    return false;
  }
}
