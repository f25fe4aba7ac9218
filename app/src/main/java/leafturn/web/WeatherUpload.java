package leafturn.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.Faults.Fault;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import leafturn.records.WeatherFile;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookWriting;
import leafturn.records.exchange.Arrivals;
import leafturn.records.exchange.Findings.Finding;
import leafturn.records.exchange.Preview;
import leafturn.records.exchange.Reading;
import leafturn.records.exchange.WeatherColumns;
import leafturn.records.exchange.WeatherImport;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import org.jspecify.annotations.Nullable;

/**
 * A daily record of its own that comes along when a property is begun.
 *
 * @param station id of the new station
 * @param fileName name of the file
 * @param days what it holds
 */
record WeatherUpload(String station, String fileName, Arrivals days) {
  private static final double USUAL_WIND_HEIGHT_M = 2;
  private static final int MOST_FAULTS = 5;
  private static final int MOST_CHARACTERS = 60;

  /**
   * The record in a field of a form, or null when no file was chosen.
   *
   * @param latest the last day that can have been measured
   * @throws InputException with its first faults, which belong to the field
   */
  static @Nullable WeatherUpload of(
      BookReading reading, Context context, String field, LocalDate latest) {
    UploadedFile file = context.isMultipartFormData() ? context.uploadedFile(field) : null;
    if (file == null || file.filename().isBlank()) {
      return null;
    }
    String station = UUID.randomUUID().toString();
    String name = Body.fileName(file, MOST_CHARACTERS);
    try {
      Preview preview =
          look(
              reading,
              name,
              bytes(file),
              new WeatherImport.Ask(station, false, Units.METRIC, latest));
      if (preview.ready()) {
        return new WeatherUpload(station, name, preview.arrivals());
      }
      throw faults(preview);
    } catch (InputException e) {
      throw InputException.of(e.faultsByField().stream().map(each -> at(field, each)).toList());
    }
  }

  private static Preview look(
      BookReading reading, String name, byte[] bytes, WeatherImport.Ask ask) {
    SourceText beginning = new SourceText(name, new String(bytes, StandardCharsets.ISO_8859_1));
    if (WeatherFile.isStationForm(beginning)) {
      SourceText text = SourceText.of(name, bytes, WeatherFile.LIMIT_BYTES);
      return WeatherImport.look(reading, text, ask);
    }
    Table table = TableFile.read(name, bytes, null);
    Reading columns = Reading.byHeadings(table, WeatherColumns.ALL);
    return WeatherImport.look(reading, table, columns, ask);
  }

  private static InputException faults(Preview preview) {
    List<Finding> found = preview.faults().kept();
    if (found.isEmpty()) {
      return new InputException("it holds no day of weather; give a file with at least one.");
    }
    int more = preview.faults().count() - Math.min(MOST_FAULTS, found.size());
    List<String> sentences =
        found.stream()
            .limit(MOST_FAULTS)
            .map(finding -> finding.place() + ": " + finding.sentence())
            .toList();
    return new InputException(
        String.join(" ", sentences) + (more > 0 ? " %d more follow.".formatted(more) : ""));
  }

  private static Fault at(String field, Fault fault) {
    return new Fault(field, fault.placed(), fault.placed());
  }

  private static byte[] bytes(UploadedFile file) {
    try (InputStream in = file.content()) {
      return in.readNBytes(WeatherFile.LIMIT_BYTES + 1);
    } catch (IOException e) {
      throw new UncheckedIOException("the file that came with a form could not be read", e);
    }
  }

  /**
   * Writes the station and its days.
   *
   * @param property the property it is for, whose place is taken for that of the record
   */
  void write(BookWriting writing, Property property) {
    String name = "Record of " + property.name();
    writing.add(
        Kind.STATION,
        station,
        new WeatherStation(
            Body.shortened(name, MOST_CHARACTERS),
            "daily file %s, given with %s".formatted(fileName, property.name()),
            USUAL_WIND_HEIGHT_M,
            property.latitudeDeg(),
            property.longitudeDeg(),
            property.elevationM(),
            false));
    days.write(writing);
  }
}
