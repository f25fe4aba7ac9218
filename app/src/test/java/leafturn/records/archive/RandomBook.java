package leafturn.records.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.Units;
import leafturn.records.Sha256;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.people.People;
import leafturn.records.people.Person;
import leafturn.records.people.Role;
import leafturn.records.people.Shares;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.sheet.PhotographSheet;

/**
 * Fills a book at random with sheets that were corrected, moved, withdrawn and restored, weather
 * with gaps and photographs; the seed decides everything.
 */
final class RandomBook {
  private static final List<String> WRITERS = List.of("Ada", "Bo Ångström", "草野", "O'Neil; \"Z\"");

  private static final List<Kind<?>> OTHERS =
      List.of(
          Kind.PROGRAMME,
          Kind.HEAP,
          Kind.INTAKE,
          Kind.VISIT,
          Kind.SOIL_TEST,
          Kind.THATCH,
          Kind.FORECAST,
          Kind.ADVICE,
          Kind.RULE,
          Kind.LABORATORY,
          Kind.TRIAL,
          Kind.TRIAL_READINGS,
          Kind.TRIAL_EVENT);

  private final SplittableRandom random;
  private final AnySheet any;
  private final Book book;
  private final List<String> stations = new ArrayList<>();
  private final List<String> properties = new ArrayList<>();
  private final List<String> lawns = new ArrayList<>();
  private final List<String> beds = new ArrayList<>();
  private final List<String> pictures = new ArrayList<>();
  private final List<String> trials = new ArrayList<>();
  private final List<String> laboratories = new ArrayList<>();
  private Instant now = Instant.parse("2024-02-29T23:59:59.999999Z");

  private RandomBook(BookPlace place, long seed) {
    this.random = new SplittableRandom(seed);
    this.any = new AnySheet(seed);
    this.book = Book.open(place, this::now);
  }

  /** A book at a place, filled; close it. */
  static Book open(BookPlace place, long seed, int sheets) {
    RandomBook filling = new RandomBook(place, seed);
    filling.fill(sheets);
    return filling.book;
  }

  static InstantSource clock() {
    return InstantSource.fixed(Instant.parse("2026-05-03T10:15:30Z"));
  }

  private Instant now() {
    now = now.plusNanos(1000L * random.nextInt(1, 1_000_000_000));
    return now;
  }

  private void fill(int sheets) {
    stations.add(add(Kind.STATION, any.station()));
    properties.add(add(Kind.PROPERTY, any.property(stations.get(0))));
    lawns.add(add(Kind.LAWN, any.lawn(properties.get(0))));
    beds.add(add(Kind.BED, any.bed(properties.get(0))));
    photograph(lawns.get(0));
    OTHERS.forEach(this::add);
    for (int i = 0; i < sheets; i++) {
      switch (random.nextInt(14)) {
        case 0 -> stations.add(add(Kind.STATION, any.station()));
        case 1 -> properties.add(add(Kind.PROPERTY, any.property(one(stations))));
        case 2 -> lawns.add(add(Kind.LAWN, any.lawn(one(properties))));
        case 3 -> add(one(OTHERS));
        case 7 -> photograph(one(lawns));
        case 4 -> change(Kind.LAWN, one(lawns), old -> any.lawn(one(properties)));
        case 5 -> weather(one(stations));
        case 6 -> person();
        default -> log();
      }
    }
  }

  private void log() {
    String id = add(Kind.LOG, log(any, one(lawns)));
    while (random.nextInt(3) == 0) {
      change(Kind.LOG, id, old -> log(any, one(lawns)));
    }
  }

  private <C extends Content> void add(Kind<C> kind) {
    String id = add(kind, belonging(kind, any.of(kind)));
    if (kind == Kind.TRIAL) {
      trials.add(id);
    } else if (kind == Kind.LABORATORY) {
      laboratories.add(id);
    }
  }

  /** A random content that belongs to sheets of the book and not to random ones. */
  private <C extends Content> C belonging(Kind<C> kind, C content) {
    try {
      ObjectNode document = (ObjectNode) new ObjectMapper().readTree(kind.write(content));
      put(document, "property", one(properties));
      put(document, "lawn", one(lawns));
      put(document, "station", one(stations));
      put(document, "bed", one(beds));
      if (kind == Kind.TRIAL) {
        document.putArray("lawns").add(one(lawns));
      }
      if (!trials.isEmpty()) {
        put(document, "trial", one(trials));
      }
      if (kind == Kind.TRIAL_READINGS) {
        put(document, "laboratory", one(laboratories));
      }
      for (JsonNode point : document.path("photographs")) {
        put((ObjectNode) point, "photograph", one(pictures));
      }
      return kind.read(new SourceText("random " + kind, document.toString()));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void put(ObjectNode document, String field, String id) {
    if (document.has(field)) {
      document.put(field, id);
    }
  }

  private void photograph(String lawn) {
    byte[] bytes = new byte[random.nextInt(1, 500)];
    random.nextBytes(bytes);
    String id = any.id();
    write(writing -> photograph(writing, id, lawn, bytes));
    pictures.add(id);
  }

  /** Puts a photograph of a lawn into a book. */
  static Sheet<PhotographSheet> photograph(
      BookWriting writing, String id, String lawn, byte[] bytes) {
    PhotographSheet sheet =
        new PhotographSheet(
            null,
            lawn,
            LocalDate.of(2025, 6, 1),
            "Klee und Moos ☘",
            PhotographSheet.MediaType.PNG,
            bytes.length,
            Sha256.of(bytes));
    Sheet<PhotographSheet> added = writing.add(Kind.PHOTOGRAPH, id, sheet);
    StoredPhotographs.put(writing, id, bytes);
    return added;
  }

  private void person() {
    Role role = one(List.of(Role.values()));
    Units units = one(List.of(Units.values()));
    String name = any.id() + " Größe";
    write(
        writing -> {
          Person person = People.add(writing, name, role, units);
          Shares.set(writing, person.id(), Set.of(one(properties)));
          return person;
        });
  }

  /** Random entries name random photographs; these name none that is not there. */
  static LogSheet log(AnySheet any, String lawn) {
    LogSheet made = any.log(lawn);
    return new LogSheet(lawn, made.day(), made.time(), made.done(), "草 " + any.id(), List.of());
  }

  /** Puts two days of weather into a station's record. */
  static int twoDays(BookWriting writing, String station) {
    Map<Quantity, Double> values = Map.of(Quantity.MAXIMUM_C, 12.5, Quantity.MINIMUM_C, 3.0);
    LocalDate day = LocalDate.of(2020, 2, 29);
    StationDays.put(
        writing,
        station,
        List.of(new StationDay(day, values), new StationDay(day.plusDays(2), Map.of())));
    return 2;
  }

  private <C extends Content> String add(Kind<C> kind, C content) {
    String id = any.id();
    write(writing -> writing.add(kind, id, content));
    return id;
  }

  private <C extends Content> void change(Kind<C> kind, String id, Function<C, C> change) {
    int how = random.nextInt(4);
    write(
        writing -> {
          Sheet<C> sheet = writing.find(kind, id).orElseThrow();
          if (sheet.withdrawn()) {
            return writing.restore(kind, id, sheet.version());
          }
          return how == 0
              ? writing.withdraw(kind, id, sheet.version())
              : writing.revise(kind, id, sheet.version(), change.apply(sheet.content()));
        });
  }

  private void weather(String station) {
    List<StationDay> days = new ArrayList<>();
    LocalDate day = LocalDate.of(2010 + random.nextInt(10), 2, 20);
    for (int i = 0; i < 20; i++) {
      day = day.plusDays(random.nextInt(1, 4));
      days.add(new StationDay(day, measured()));
    }
    write(
        writing -> {
          StationDays.put(writing, station, days);
          return days.size();
        });
  }

  private Map<Quantity, Double> measured() {
    Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
    put(values, Quantity.MINIMUM_C, -random.nextDouble(30));
    put(values, Quantity.MAXIMUM_C, random.nextDouble(40));
    put(values, Quantity.RAIN_MM, Math.rint(random.nextDouble(500)) / 10);
    put(values, Quantity.WIND_M_PER_S, random.nextDouble(1e-4));
    put(values, Quantity.HUMIDITY_MAXIMUM_PERCENT, 100.0);
    put(values, Quantity.HUMIDITY_MINIMUM_PERCENT, random.nextDouble(100));
    put(values, Quantity.DEW_POINT_C, random.nextDouble(-20, 20));
    put(values, Quantity.RADIATION_MJ_PER_M2, random.nextDouble(40));
    return values;
  }

  private void put(Map<Quantity, Double> values, Quantity quantity, double value) {
    if (random.nextInt(5) > 0) {
      values.put(quantity, value);
    }
  }

  private void write(Function<BookWriting, ?> writing) {
    book.<Object>write(one(WRITERS), writing::apply);
  }

  private <T> T one(List<T> values) {
    return values.get(random.nextInt(values.size()));
  }
}
