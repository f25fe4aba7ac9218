package leafturn.records.round;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.records.ExampleWeather;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookTitle;
import leafturn.records.book.BookWriting;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.Done;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.Property;
import leafturn.records.sheet.WeatherStation;

/**
 * A large invented book, the same for the same numbers: stations whose weather is that of the
 * examples, year by year with other temperatures and rain; lawns of the examples' kinds with years
 * of logs.
 */
public final class BigBook {
  /** The day that is today in it. */
  public static final LocalDate TODAY = LocalDate.of(2026, 6, 15);

  private static final int WEATHER_YEARS = 8;
  private static final int LOG_YEARS = 3;
  private static final int FIRST_EXAMPLE_YEAR = 2012;
  private static final int EXAMPLE_YEARS = 4;
  private static final List<String> EXAMPLES =
      List.of(
          "heron-bank-play",
          "heron-bank-verge",
          "linden-house-back",
          "linden-house-front",
          "mill-race-orchard",
          "quarry-cottage-terrace");
  private static final List<String> ZONES =
      List.of("America/New_York", "Europe/Paris", "UTC", "Europe/Dublin");
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Random random = new Random(20260615);
  private final WeatherSeries example = ExampleWeather.newYork();

  /**
   * How large.
   *
   * @param lawns number of lawns
   * @param properties number of properties they lie on
   * @param stations number of weather stations these share
   */
  public record Size(int lawns, int properties, int stations) {
    /** The size of the figures in docs/speed.md. */
    public static final Size FULL = new Size(200, 60, 6);
  }

  private BigBook() {}

  /** Writes the book of the full size into a folder, or a database: {@code BigBook PLACE}. */
  public static void main(String[] arguments) {
    try (Book book = Book.open(BookPlace.of(arguments[0]), Clock.systemUTC())) {
      write(book, Size.FULL);
    }
  }

  /** Writes it into an empty book. */
  public static void write(Book book, Size size) {
    new BigBook().fill(book, size);
  }

  private void fill(Book book, Size size) {
    String standing = "A large invented book for measurements.";
    write(book, w -> BookTitle.put(w, new BookTitle("Ines Marlowe", standing, TODAY)));
    List<String> stations = new ArrayList<>();
    for (int i = 0; i < size.stations(); i++) {
      String id = id();
      stations.add(id);
      WeatherStation station =
          new WeatherStation(
              "Station " + (i + 1), "Made up after New York", 2, null, null, null, false);
      List<StationDay> days = weather();
      write(
          book,
          w -> {
            w.add(Kind.STATION, id, station);
            StationDays.put(w, id, days);
          });
    }
    List<String> properties = new ArrayList<>();
    for (int i = 0; i < size.properties(); i++) {
      String id = id();
      properties.add(id);
      Property property = property(i, stations.get(i % stations.size()));
      write(book, w -> w.add(Kind.PROPERTY, id, property));
    }
    for (int i = 0; i < size.lawns(); i++) {
      int number = i;
      String property = properties.get(i % properties.size());
      write(book, w -> lawn(w, number, property));
    }
  }

  @FunctionalInterface
  private interface Part {
    void write(BookWriting writing);
  }

  private static void write(Book book, Part part) {
    book.write(
        "Ines Marlowe",
        writing -> {
          part.write(writing);
          return part;
        });
  }

  private List<StationDay> weather() {
    double warmerC = random.nextDouble() * 6 - 4;
    double wetter = 0.7 + random.nextDouble() * 0.8;
    List<StationDay> days = new ArrayList<>();
    LocalDate end = TODAY;
    for (LocalDate day = end.minusYears(WEATHER_YEARS); day.isBefore(end); day = day.plusDays(1)) {
      int year = FIRST_EXAMPLE_YEAR + day.getYear() % EXAMPLE_YEARS;
      int source = example.indexOf(day.withYear(year));
      double shiftC = warmerC + random.nextGaussian();
      Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
      values.put(Quantity.MINIMUM_C, round(example.value(Quantity.MINIMUM_C, source) + shiftC));
      values.put(Quantity.MAXIMUM_C, round(example.value(Quantity.MAXIMUM_C, source) + shiftC));
      values.put(Quantity.RAIN_MM, round(example.value(Quantity.RAIN_MM, source) * wetter));
      days.add(new StationDay(day, values));
    }
    return days;
  }

  private Property property(int number, String station) {
    return new Property(
        "Property " + (number + 1),
        "property-" + (number + 1),
        round(36 + random.nextDouble() * 16),
        null,
        round(random.nextDouble() * 400),
        ZONES.get(number % ZONES.size()),
        station,
        null);
  }

  private void lawn(BookWriting writing, int number, String property) {
    ObjectNode lawn = example(EXAMPLES.get(number % EXAMPLES.size()));
    ObjectNode programme = JSON.createObjectNode();
    for (String field : List.of("mowing", "feeding", "irrigation")) {
      if (lawn.has(field)) {
        programme.set(field, lawn.get(field));
      }
    }
    lawn.without(List.of("site", "mowing", "feeding", "irrigation"));
    String id = id();
    lawn.put("property", property).put("name", "Lawn " + (number + 1));
    lawn.put("address", "lawn-" + (number + 1)).put("areaM2", 50 + random.nextInt(2000));
    lawn.put("habit", "Mown each week or so.");
    writing.add(Kind.LAWN, id, Kind.LAWN.read(text(lawn)));
    programme.put("lawn", id).put("from", "2020-01-01");
    writing.add(Kind.PROGRAMME, id(), Kind.PROGRAMME.read(text(programme)));
    double heightMm = programme.path("mowing").path("heightMm").doubleValue();
    for (int back = LOG_YEARS; back >= 0; back--) {
      year(writing, id, TODAY.getYear() - back, heightMm);
    }
  }

  /** A year of mowings, three feedings and a few waterings. */
  private void year(BookWriting writing, String lawn, int year, double heightMm) {
    LocalDate day = LocalDate.of(year, 4, 1).plusDays(random.nextInt(9));
    int number = 0;
    while (day.isBefore(LocalDate.of(year, 11, 5)) && day.isBefore(TODAY)) {
      boolean inLog = day.isAfter(TODAY.minusYears(LOG_YEARS));
      if (inLog) {
        double returned = random.nextInt(3) == 0 ? 0 : 1;
        log(
            writing,
            lawn,
            day,
            new Done.Mown(null, heightMm, returned, null, null, null, null, false));
        if (number % 10 == 2) {
          log(writing, lawn, day, new Done.Fed(3.0, 1.0, 0.2, 1.0, null, null, null, null));
        } else if (number % 10 == 7) {
          log(writing, lawn, day, new Done.Watered(10));
        }
      }
      number++;
      day = day.plusDays(6 + random.nextInt(4));
    }
  }

  private void log(BookWriting writing, String lawn, LocalDate day, Done done) {
    writing.add(Kind.LOG, id(), new LogSheet(lawn, day, null, done, null, List.of()));
  }

  private static ObjectNode example(String name) {
    SourceText text = SourceText.ofResource("/leafturn/examples/" + name + ".lawn.json");
    try {
      return (ObjectNode) JSON.readTree(text.text());
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static SourceText text(ObjectNode json) {
    return new SourceText("big book", json.toString());
  }

  private String id() {
    return new UUID(random.nextLong(), random.nextLong()).toString();
  }

  private static double round(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
