package leafturn.records;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.model.weather.generator.WeatherForecast;
import leafturn.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * Reads a forecast: a CSV with one line a day, in order and without a gap.
 *
 * <p>Columns {@code date}, {@code temp_max} (or {@code tmax_c}) and {@code temp_min} (or {@code
 * tmin_c}) are required, and {@code rain_mm} (or {@code precipitation}), {@code
 * rain_chance_percent} or both; {@code wind_m_s} (or {@code wind}) may stand beside them.
 */
public final class ForecastFile {
  private static final int LIMIT_BYTES = 100_000;
  private static final String DATE = "date";
  private static final String MAXIMUM = "temp_max";
  private static final String MINIMUM = "temp_min";
  private static final String RAIN = "rain_mm";
  private static final String CHANCE = "rain_chance_percent";
  private static final String WIND = "wind_m_s";
  private static final double PERCENT = 100;

  private static final Map<String, List<String>> NAMES = names();
  private static final Map<String, Range> LIMITS =
      Map.of(
          MAXIMUM, WeatherLimits.of(Quantity.MAXIMUM_C),
          MINIMUM, WeatherLimits.of(Quantity.MINIMUM_C),
          RAIN, new Range("the rain of a day", 0, 600, "mm"),
          CHANCE, new Range("the chance of rain", 0, 100, "%"),
          WIND, new Range("the mean wind of a day", 0, 60, "m/s"));

  private final CsvTable table;
  private final Faults faults;
  private final Map<String, Integer> columns = new LinkedHashMap<>();
  private final List<WeatherForecast.Day> days = new ArrayList<>();
  private @Nullable LocalDate first;
  private @Nullable LocalDate last;

  private ForecastFile(SourceText source) {
    this.faults = new Faults(source.name());
    this.table = new CsvTable(source, faults);
  }

  private static Map<String, List<String>> names() {
    Map<String, List<String>> names = new LinkedHashMap<>();
    names.put(MAXIMUM, List.of(MAXIMUM, "tmax_c"));
    names.put(MINIMUM, List.of(MINIMUM, "tmin_c"));
    names.put(RAIN, List.of(RAIN, "precipitation"));
    names.put(CHANCE, List.of(CHANCE));
    names.put(WIND, List.of(WIND, "wind"));
    return names;
  }

  /**
   * Reads a forecast from a file.
   *
   * @throws InputException with one sentence for each fault of the file
   */
  public static WeatherForecast read(Path file) {
    return read(SourceText.read(file, LIMIT_BYTES));
  }

  /**
   * Reads a forecast from text.
   *
   * @throws InputException with one sentence for each fault of the text
   */
  public static WeatherForecast read(SourceText source) {
    return new ForecastFile(source).read();
  }

  private WeatherForecast read() {
    findColumns();
    faults.throwIfAny();
    table.forEachRow(this::row);
    if (first == null && faults.none()) {
      faults.add("it has a header but no days; add one line for each day of the forecast.");
    }
    if (days.size() > WeatherForecast.MOST_DAYS) {
      faults.add(
          "it has %d days, but a forecast is followed for %d at most; leave out the later ones."
              .formatted(days.size(), WeatherForecast.MOST_DAYS));
    }
    faults.throwIfAny();
    return new WeatherForecast(Objects.requireNonNull(first), days);
  }

  private void findColumns() {
    if (table.column(DATE) < 0) {
      faults.add(1, "there is no column date; add it.");
    }
    NAMES.forEach(
        (column, names) -> {
          for (String name : names) {
            if (table.column(name) >= 0) {
              columns.putIfAbsent(column, table.column(name));
            }
          }
        });
    for (String column : List.of(MAXIMUM, MINIMUM)) {
      if (!columns.containsKey(column)) {
        faults.add(
            1,
            "there is no column %s; add it."
                .formatted(String.join(" or ", NAMES.getOrDefault(column, List.of()))));
      }
    }
    if (!columns.containsKey(RAIN) && !columns.containsKey(CHANCE)) {
      faults.add(1, "there is neither a column rain_mm nor rain_chance_percent; add one of them.");
    }
  }

  private void row(CsvTable.Row row) {
    String text = row.text(table.column(DATE));
    LocalDate day = Dates.parse(text);
    if (day == null) {
      row.fault(table.column(DATE), Dates.fault(text));
      return;
    }
    checkOrder(row, day);
    first = first == null ? day : first;
    last = day;
    long before = faults.count();
    double maximumC = needed(row, MAXIMUM);
    double minimumC = needed(row, MINIMUM);
    double rainMm = value(row, RAIN);
    double chance = value(row, CHANCE) / PERCENT;
    double wind = value(row, WIND);
    if (maximumC < minimumC) {
      faults.add(
          row.line(),
          "the maximum of %s °C lies below the minimum of %s °C; correct one."
              .formatted(Numbers.plain(maximumC), Numbers.plain(minimumC)));
    }
    if (faults.count() == before && Double.isNaN(rainMm) && Double.isNaN(chance)) {
      faults.add(row.line(), "neither rain_mm nor rain_chance_percent is given; give one of them.");
    }
    if (rainMm > 0 && chance == 0) {
      faults.add(
          row.line(),
          "%s mm of rain stand beside a chance of 0 %%; give a chance above 0, or 0 mm."
              .formatted(Numbers.plain(rainMm)));
    }
    if (faults.count() == before) {
      days.add(new WeatherForecast.Day(minimumC, maximumC, rainMm, chance, wind));
    }
  }

  private void checkOrder(CsvTable.Row row, LocalDate day) {
    LocalDate before = last;
    if (before == null || day.equals(before.plusDays(1))) {
      return;
    }
    if (day.equals(before)) {
      row.fault(
          table.column(DATE), "%s stands here and on the line before; keep one.".formatted(day));
    } else if (day.isBefore(before)) {
      row.fault(
          table.column(DATE), "%s comes after %s; put the days in order.".formatted(day, before));
    } else {
      row.fault(
          table.column(DATE),
          missing(before.plusDays(1), day.minusDays(1))
              + "; a forecast has a line for each day, and nothing is guessed between.");
    }
  }

  private static String missing(LocalDate first, LocalDate last) {
    return first.equals(last)
        ? "%s is missing".formatted(first)
        : "the days from %s to %s are missing".formatted(first, last);
  }

  private double needed(CsvTable.Row row, String name) {
    long before = faults.count();
    double value = value(row, name);
    if (Double.isNaN(value) && faults.count() == before) {
      row.fault(columns.getOrDefault(name, 0), "it is empty; a forecast day needs it.");
    }
    return value;
  }

  private double value(CsvTable.Row row, String name) {
    Integer column = columns.get(name);
    if (column == null) {
      return Double.NaN;
    }
    double value = row.number(column);
    Range limits = LIMITS.get(name);
    if (!Double.isNaN(value) && limits != null && !limits.contains(value)) {
      row.fault(
          column,
          "%s is out of range; give %s %s %s."
              .formatted(
                  Numbers.plain(value),
                  limits.name(),
                  Numbers.range(limits.low(), limits.high()),
                  limits.unit()));
      return Double.NaN;
    }
    return value;
  }
}
