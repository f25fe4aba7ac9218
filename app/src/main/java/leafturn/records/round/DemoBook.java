package leafturn.records.round;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import leafturn.model.weather.WeatherSeries;
import leafturn.records.ExampleWeather;
import leafturn.records.LogFile;
import leafturn.records.LogReading;
import leafturn.records.RoundFile;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.BookTitle;
import leafturn.records.book.BookWriting;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.Address;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.WeatherStation;

/**
 * The invented round that comes with the program, written into a book: the files of the examples,
 * sheet by sheet. The ids are the same each time.
 */
public final class DemoBook {
  private static final String EXAMPLES = "/leafturn/examples/";
  private static final String STATION = id("station");
  private static final List<String> OF_THE_PROGRAMME = List.of("mowing", "feeding", "irrigation");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final BookWriting writing;
  private final LocalDate firstDay;

  private DemoBook(BookWriting writing, LocalDate firstDay) {
    this.writing = writing;
    this.firstDay = firstDay;
  }

  /** Writes the round into an empty book; writing it twice changes nothing. */
  public static void write(Book book) {
    RoundFile.Round round = RoundFile.read(file("round.json"));
    WeatherSeries weather = ExampleWeather.newYork();
    book.write(
        round.adviser(),
        writing -> {
          BookTitle.put(writing, new BookTitle(round.adviser(), round.standing(), round.day()));
          writing.add(Kind.STATION, STATION, station(round.weatherOrigin()));
          StationDays.put(writing, STATION, ExampleStation.days());
          DemoBook demo = new DemoBook(writing, weather.firstDay());
          round.lawns().forEach(demo::add);
          DemoTrial.write(
              writing,
              object(file("split-yards.trial.json")),
              round.lawns().stream().map(entry -> id("lawn " + entry.slug())).toList());
          return round;
        });
  }

  private static WeatherStation station(String origin) {
    return new WeatherStation("New York", origin, 2, 40.78, null, 40.0, false);
  }

  private void add(RoundFile.Entry entry) {
    ObjectNode lawn = object(file(entry.description()));
    ObjectNode site = (ObjectNode) lawn.remove("site");
    ObjectNode programme = JSON.createObjectNode();
    for (String field : OF_THE_PROGRAMME) {
      JsonNode section = lawn.remove(field);
      if (section != null) {
        programme.set(field, section);
      }
    }
    String property = property(entry, site);
    String id = id("lawn " + entry.slug());
    lawn.put("property", property);
    lawn.put("name", entry.lawn()).put("address", entry.slug()).put("habit", entry.habit());
    writing.add(Kind.LAWN, id, Kind.LAWN.read(text(lawn, entry.slug())));
    programme.put("lawn", id).put("from", firstDay.toString());
    String programmeId = id("programme " + entry.slug());
    writing.add(Kind.PROGRAMME, programmeId, Kind.PROGRAMME.read(text(programme, entry.slug())));
    for (LogReading.Line line : LogFile.read(file(entry.log())).lines()) {
      String name = "log " + entry.slug() + " " + line.number();
      writing.add(Kind.LOG, id(name), LogSheet.of(id, line));
    }
  }

  private String property(RoundFile.Entry entry, ObjectNode site) {
    String address = Address.of(entry.property());
    String id = id("property " + address);
    site.remove("windHeightM");
    site.put("name", entry.property()).put("address", address).put("station", STATION);
    writing.add(Kind.PROPERTY, id, Kind.PROPERTY.read(text(site, address)));
    return id;
  }

  private static SourceText file(String name) {
    return SourceText.ofResource(EXAMPLES + name);
  }

  private static SourceText text(ObjectNode json, String name) {
    return new SourceText(name, json.toString());
  }

  private static ObjectNode object(SourceText source) {
    try {
      return (ObjectNode) JSON.readTree(source.text());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(source.name() + " of the program is no JSON", e);
    }
  }

  /** The id of a thing of the round, the same each time. */
  static String id(String name) {
    byte[] bytes = ("leafturn demo " + name).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(bytes).toString();
  }
}
