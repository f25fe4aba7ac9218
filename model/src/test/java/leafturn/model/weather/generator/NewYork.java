package leafturn.model.weather.generator;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;

/** The record of New York, 2012-2015, that the examples use. */
final class NewYork {
  private static final Path FILE = Path.of("..", "docs", "examples", "new-york-2012-2015.csv");

  private NewYork() {}

  static WeatherSeries record() {
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(FILE)) {
      List<NamedCsvRecord> rows = reader.stream().toList();
      return new WeatherSeries(
          LocalDate.parse(rows.get(0).getField("date")),
          Map.of(
              Quantity.RAIN_MM, column(rows, "precipitation"),
              Quantity.MAXIMUM_C, column(rows, "temp_max"),
              Quantity.MINIMUM_C, column(rows, "temp_min"),
              Quantity.WIND_M_PER_S, column(rows, "wind")));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static double[] column(List<NamedCsvRecord> rows, String name) {
    return rows.stream().mapToDouble(row -> Double.parseDouble(row.getField(name))).toArray();
  }
}
