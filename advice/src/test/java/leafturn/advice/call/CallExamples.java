package leafturn.advice.call;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import leafturn.model.grass.Species;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.Programme;
import leafturn.model.soil.Soil;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** A lawn, its log and the example weather, for tests of the call. */
final class CallExamples {
  private static final Path WEATHER = Path.of("..", "docs", "examples", "new-york-2012-2015.csv");
  private static final Soil LOAM =
      new Soil(
          new Soil.Water(0.25, 0.12, 0.45, 61), new Soil.Test(5, 15, 1.33, 45, 120, "Mehlich-3"));

  private CallExamples() {}

  /** New York 2012-2015. */
  static WeatherSeries newYork() {
    List<NamedCsvRecord> rows = new ArrayList<>();
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(WEATHER)) {
      reader.forEach(rows::add);
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    values.put(Quantity.MINIMUM_C, column(rows, "temp_min"));
    values.put(Quantity.MAXIMUM_C, column(rows, "temp_max"));
    values.put(Quantity.RAIN_MM, column(rows, "precipitation"));
    values.put(Quantity.WIND_M_PER_S, column(rows, "wind"));
    return new WeatherSeries(LocalDate.parse(rows.get(0).getField("date")), values);
  }

  private static double[] column(List<NamedCsvRecord> rows, String name) {
    ToDoubleFunction<NamedCsvRecord> value = row -> Double.parseDouble(row.getField(name));
    return rows.stream().mapToDouble(value).toArray();
  }

  /** The same weather with one value replaced on some days. */
  static WeatherSeries changed(
      WeatherSeries weather, Quantity quantity, LocalDate from, LocalDate to, double value) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    for (Quantity each : Quantity.values()) {
      if (weather.has(each)) {
        double[] column = new double[weather.days()];
        for (int day = 0; day < column.length; day++) {
          LocalDate date = weather.dayAt(day);
          boolean inside = each == quantity && !date.isBefore(from) && !date.isAfter(to);
          column[day] = inside ? value : weather.value(each, day);
        }
        values.put(each, column);
      }
    }
    return new WeatherSeries(weather.firstDay(), values);
  }

  /** Tall fescue on loam, cut to 76 mm by the one-third rule. */
  static Lawn fescue() {
    return lawn(0);
  }

  /** The same without years before the record. */
  static Call fescueOn(WeatherSeries weather, LocalDate day) {
    return MowingCall.of(fescue(), weather, List.of(), day);
  }

  static Lawn withoutSpinUp() {
    Lawn lawn = fescue();
    return new Lawn(lawn.site(), lawn.ground(), lawn.programme(), 0, lawn.parameters());
  }

  /** The same, mown every so many days; 0 stands for the one-third rule. */
  static Lawn lawn(int everyDays) {
    return new Lawn(
        Site.at(40.78, 40),
        new Lawn.Ground(
            Species.TALL_FESCUE, LOAM, 0, 640.0, new Lawn.Mower(530.0, 55.0, 4.0, false)),
        new Programme(
            new Programme.Mowing(
                76,
                everyDays,
                CalendarDay.on(MonthDay.of(4, 1)),
                CalendarDay.on(MonthDay.of(11, 15)),
                1),
            List.of(
                new Programme.Feeding(CalendarDay.ofYear(110), 4.9, 0, 0, 0),
                new Programme.Feeding(CalendarDay.ofYear(245), 4.9, 0, 0, 0)),
            0),
        4,
        Map.of());
  }

  /** A log whose last entry sets the grass to a height on a day, uncut. */
  static List<LogEntry> standingAt(LocalDate day, double heightMm) {
    return List.of(new LogEntry.Mown(day, heightMm, heightMm, 1));
  }
}
