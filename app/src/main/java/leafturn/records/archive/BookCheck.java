package leafturn.records.archive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.MeasuredWeather;
import leafturn.records.Sha256;
import leafturn.records.SourceText;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.book.StoredSheets;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;

/** Goes through all that a book holds and tells every damage. */
public final class BookCheck {
  private static final Set<String> PLACES = Set.of("property", "lawn", "station");

  private final BookReading book;
  private final Map<String, String> kinds = new HashMap<>();
  private final Map<String, PhotographSheet> pictures = new HashMap<>();
  private final List<Reference> references = new ArrayList<>();
  private final List<String> damages;
  private long versions;
  private long weatherDays;
  private long photographs;
  private long people;

  private record Reference(String from, References.Named to) {}

  private BookCheck(BookReading book, List<String> damages) {
    this.book = book;
    this.damages = damages;
  }

  /**
   * Checks a book that lies open, as it stands at one moment.
   *
   * @throws BookUnavailableException when the database does not answer
   */
  public static CheckResult run(Book book) {
    List<String> damages = new ArrayList<>();
    try {
      CheckResult result = book.snapshot(reading -> new BookCheck(reading, damages).result());
      return ShelfCheck.added(book.place(), result);
    } catch (BookUnavailableException e) {
      // A folder's book is read by ourselves, so what cannot be read there is damaged.
      if (book.place().folder() == null) {
        throw e;
      }
      damages.add(String.valueOf(e.getMessage()));
    } catch (IllegalStateException | IndexOutOfBoundsException | OutOfMemoryError e) {
      // What a damaged file makes the database throw, whatever its bytes lead to.
      damages.add("The book cannot be read further: %s.".formatted(e.getClass().getSimpleName()));
    }
    return new CheckResult(0, 0, 0, 0, 0, damages);
  }

  private CheckResult result() {
    for (String kind : StoredSheets.kinds(book)) {
      Kind.named(kind)
          .ifPresentOrElse(
              this::sheets,
              () ->
                  damages.add(
                      "There are sheets of the kind %s, which this program does not know."
                          .formatted(Faults.quoted(kind))));
    }
    references.forEach(this::reference);
    revisions();
    weather();
    photographs();
    people();
    return new CheckResult(kinds.size(), versions, weatherDays, photographs, people, damages);
  }

  private <C extends Content> void sheets(Kind<C> kind) {
    StoredSheets.forEach(
        book,
        kind.name(),
        sheet -> {
          kinds.put(sheet.id(), sheet.kind());
          versions += sheet.versions().size();
          SheetCheck<C> check = new SheetCheck<>(kind, sheet, damages);
          check
              .run()
              .ifPresent(
                  content -> {
                    References.of(content)
                        .forEach(to -> references.add(new Reference(check.name(), to)));
                    if (content instanceof PhotographSheet photograph) {
                      pictures.put(sheet.id(), photograph);
                    }
                  });
        });
  }

  private void reference(Reference reference) {
    References.Named to = reference.to();
    String found = kinds.get(to.id());
    if (!to.kind().name().equals(found)) {
      damages.add(
          "%s: its %s %s is %s."
              .formatted(
                  reference.from(),
                  to.field(),
                  to.id(),
                  found == null ? "not in the book" : "a " + found + ", not a " + to.kind()));
    }
  }

  /** Without its row a place's changes go unnoticed and old calls are shown for new. */
  private void revisions() {
    Set<String> expected = new HashSet<>(Set.of("rules", "register"));
    kinds.forEach(
        (id, kind) -> {
          if (PLACES.contains(kind)) {
            expected.add(id);
          }
        });
    expected.removeAll(book.revisions().keySet());
    expected.stream()
        .sorted()
        .forEach(place -> damages.add("There is no revision of %s.".formatted(place)));
  }

  private void weather() {
    List<String> stations =
        book.handle()
            .createQuery("select distinct station from station_day order by station")
            .mapTo(String.class)
            .list();
    for (String station : stations) {
      List<StationDay> days = StationDays.of(book, station);
      weatherDays += days.size();
      if (!"station".equals(kinds.get(station))) {
        damages.add("There is weather of %s, which is no station.".formatted(station));
      }
      if (!readable(station, days)) {
        days.forEach(day -> day(station, day));
      }
    }
  }

  private void photographs() {
    Set<String> missing = new TreeSet<>(pictures.keySet());
    for (String id : StoredPhotographs.ids(book)) {
      photographs++;
      missing.remove(id);
      PhotographSheet sheet = pictures.get(id);
      if (sheet == null) {
        damages.add("There is a picture %s that belongs to no photograph.".formatted(id));
      } else if (!Sha256.of(StoredPhotographs.bytes(book, id)).equals(sheet.sha256())) {
        damages.add(
            "photograph %s: its picture is damaged; its digest does not fit.".formatted(id));
      }
    }
    missing.forEach(id -> damages.add("photograph %s: its picture is missing.".formatted(id)));
  }

  private void people() {
    for (PersonLine person : PersonLine.all(book)) {
      people++;
      for (String property : person.shares()) {
        if (!"property".equals(kinds.get(property))) {
          damages.add(
              "%s is shared with %s, but is no property."
                  .formatted(property, Faults.quoted(person.name())));
        }
      }
    }
  }

  private static boolean readable(String station, List<StationDay> days) {
    try {
      MeasuredWeather.read(csv(station, days));
      return true;
    } catch (InputException e) {
      return false;
    }
  }

  private void day(String station, StationDay day) {
    try {
      MeasuredWeather.read(csv(station, List.of(day)));
    } catch (InputException e) {
      e.faultsByField()
          .forEach(
              fault ->
                  damages.add(
                      "The weather of station %s on %s, %s: %s"
                          .formatted(station, day.day(), fault.field(), fault.sentence())));
    }
  }

  /** One rule for what weather may be: that of weather files. */
  private static SourceText csv(String station, List<StationDay> days) {
    StringBuilder text = new StringBuilder(MeasuredWeather.header()).append('\n');
    days.forEach(day -> text.append(MeasuredWeather.line(day.day(), day.values())).append('\n'));
    return new SourceText("station " + station, text.toString());
  }
}
