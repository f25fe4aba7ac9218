package leafturn.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * Daily weather as it was measured, gaps and all, as the CSV with a header that {@code
 * docs/schemas/README.md} describes. Writing and reading again gives the same numbers.
 */
public final class MeasuredWeather {
  private static final Map<Quantity, String> COLUMNS = columns();

  private MeasuredWeather() {}

  /**
   * One day of a record.
   *
   * @param day the day
   * @param values what was measured, in the units of {@link Quantity}
   */
  public record Day(LocalDate day, Map<Quantity, Double> values) {
    public Day {
      values = Map.copyOf(values);
    }
  }

  private static Map<Quantity, String> columns() {
    Map<Quantity, String> columns = new EnumMap<>(Quantity.class);
    columns.put(Quantity.MINIMUM_C, "tmin_c");
    columns.put(Quantity.MAXIMUM_C, "tmax_c");
    columns.put(Quantity.RAIN_MM, "rain_mm");
    columns.put(Quantity.WIND_M_PER_S, "wind_m_s");
    columns.put(Quantity.HUMIDITY_MAXIMUM_PERCENT, "humidity_max_percent");
    columns.put(Quantity.HUMIDITY_MINIMUM_PERCENT, "humidity_min_percent");
    columns.put(Quantity.DEW_POINT_C, "dewpoint_c");
    columns.put(Quantity.RADIATION_MJ_PER_M2, "radiation_mj_m2");
    return columns;
  }

  /** The header line of {@link #line}, without a line end. */
  public static String header() {
    return "date," + String.join(",", COLUMNS.values());
  }

  /** The line of a day, without a line end; what was not measured is an empty cell. */
  public static String line(LocalDate day, Map<Quantity, Double> values) {
    StringBuilder line = new StringBuilder(day.toString());
    for (Quantity quantity : COLUMNS.keySet()) {
      Double value = values.get(quantity);
      line.append(',').append(value == null ? "" : exact(value));
    }
    return line.toString();
  }

  /**
   * Reads a record; nothing is filled in.
   *
   * @throws InputException with one sentence for each fault of the text
   */
  public static List<Day> read(SourceText source) {
    Faults faults = new Faults(source.name());
    MeasuredDays days = new WeatherCsv(source, null, faults).read();
    faults.throwIfAny();
    List<Day> read = new ArrayList<>();
    days.forEach(
        (day, values) -> {
          Map<Quantity, Double> measured = new EnumMap<>(Quantity.class);
          for (Quantity quantity : Quantity.values()) {
            double value = values[quantity.ordinal()];
            if (!Double.isNaN(value)) {
              measured.put(quantity, value);
            }
          }
          read.add(new Day(day, measured));
        });
    return read;
  }

  /** The shortest text that is read as the same number. */
  public static String exact(double value) {
    String text = Double.toString(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
