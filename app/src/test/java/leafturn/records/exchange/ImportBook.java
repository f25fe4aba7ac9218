package leafturn.records.exchange;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import leafturn.quantity.Units;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.Engine;
import leafturn.records.book.Sheet;
import leafturn.records.book.Today;
import leafturn.records.sheet.Kind;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;
import org.jspecify.annotations.Nullable;

/** A book with two properties, three lawns and a station, and the short way to look at tables. */
final class ImportBook implements AutoCloseable {
  static final LocalDate TODAY = LocalDate.of(2015, 6, 15);

  /** The last day whose weather can have been measured. */
  static final LocalDate LAST_MEASURED = LocalDate.of(2026, 1, 1);

  static final String STATION = "00000000-0000-0000-0000-000000000001";
  static final String HOUSE = "00000000-0000-0000-0000-000000000002";
  static final String MILL = "00000000-0000-0000-0000-000000000003";
  static final String FRONT = "00000000-0000-0000-0000-000000000004";
  static final String BACK = "00000000-0000-0000-0000-000000000005";
  static final String MILL_FRONT = "00000000-0000-0000-0000-000000000006";

  private final Book book;

  ImportBook(Path folder) {
    book = Engine.H2.newBook(folder);
    book.write(
        "Ada",
        writing -> {
          writing.add(
              Kind.STATION,
              STATION,
              Kind.STATION.read(
                  json(
                      "{'name': 'Hill', 'origin': 'our own gauge', 'windHeightM': 2, 'latitudeDeg': 40.4, 'longitudeDeg': -73.9, 'elevationM': 20}")));
          String site = "'latitudeDeg': 40.78, 'timeZone': 'America/New_York'}";
          writing.add(
              Kind.PROPERTY,
              HOUSE,
              Kind.PROPERTY.read(
                  json("{'name': 'Linden House', 'address': 'linden-house', " + site)));
          writing.add(
              Kind.PROPERTY,
              MILL,
              Kind.PROPERTY.read(json("{'name': 'Mill Race', 'address': 'mill-race', " + site)));
          writing.add(Kind.LAWN, FRONT, lawn(HOUSE, "Front", "linden-house-front"));
          writing.add(Kind.LAWN, BACK, lawn(HOUSE, "Back", "linden-house-back"));
          return writing.add(Kind.LAWN, MILL_FRONT, lawn(MILL, "Front", "mill-race-front"));
        });
  }

  /** Gives a lawn a programme. */
  void keep(String lawn, String mowing, String deckHeightsMm) {
    book.write(
        "Ada",
        writing ->
            writing.add(
                Kind.PROGRAMME,
                UUID.randomUUID().toString(),
                Kind.PROGRAMME.read(
                    json(
                        "{'lawn': '%s', 'from': '2015-01-01', 'mowing': {%s}, 'deckHeightsMm': %s}"
                            .formatted(lawn, mowing, deckHeightsMm)))));
  }

  private static leafturn.records.sheet.LawnSheet lawn(
      String property, String name, String address) {
    return Kind.LAWN.read(
        json(
            "{'property': '%s', 'name': '%s', 'address': '%s', 'grass': 'tall fescue'}"
                .formatted(property, name, address)));
  }

  static SourceText json(String text) {
    return new SourceText("test", text.replace('\'', '"'));
  }

  Book book() {
    return book;
  }

  static Table csv(String text) {
    return TableFile.read("log.csv", text.getBytes(StandardCharsets.UTF_8), null);
  }

  Preview log(Table table, @Nullable String lawn) {
    return log(table, lawn, TODAY);
  }

  Preview log(Table table, @Nullable String lawn, LocalDate today) {
    Reading reading = Reading.byHeadings(table, LogColumns.ALL);
    LogImport.Ask ask = ask(lawn, today);
    return book.read(reader -> LogImport.look(reader, table, reading, ask));
  }

  static LogImport.Ask ask(@Nullable String lawn, LocalDate today) {
    return new LogImport.Ask(lawn, new Today(today, Instant.EPOCH), Units.METRIC);
  }

  Preview log(String csv, @Nullable String lawn) {
    return log(csv(csv), lawn);
  }

  Preview properties(String csv) {
    Table table = csv(csv);
    Reading reading = Reading.byHeadings(table, PropertyColumns.ALL);
    return book.read(
        reader -> PropertyImport.look(reader, table, reading, LocalDate.of(2015, 1, 1)));
  }

  Preview weather(String csv, boolean replacing) {
    Table table = csv(csv);
    Reading reading = Reading.byHeadings(table, WeatherColumns.ALL);
    return book.read(reader -> WeatherImport.look(reader, table, reading, weatherAsk(replacing)));
  }

  static WeatherImport.Ask weatherAsk(boolean replacing) {
    return new WeatherImport.Ask(STATION, replacing, Units.METRIC, LAST_MEASURED);
  }

  void write(Preview preview) {
    book.write(
        "Ada",
        writing -> {
          preview.arrivals().write(writing);
          return preview;
        });
  }

  /** What is written in the log of a lawn, withdrawn or not. */
  java.util.List<Sheet<leafturn.records.sheet.LogSheet>> entries(String lawn) {
    return book.read(reader -> reader.everOfLawn(Kind.LOG, lawn));
  }

  @Override
  public void close() {
    book.close();
  }
}
