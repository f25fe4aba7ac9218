package leafturn.records.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.MeasuredWeather;
import leafturn.records.OutputFile;
import leafturn.records.ProgramVersion;
import leafturn.records.Sha256;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.book.StationDay;
import leafturn.records.book.StationDays;
import leafturn.records.book.StoredSheet;
import leafturn.records.book.StoredSheets;
import leafturn.records.book.StoredVersion;
import leafturn.records.sheet.Content;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.PhotographSheet;
import org.jspecify.annotations.Nullable;

/**
 * Writes the whole book to an open archive, as {@code docs/schemas/archive.md} describes it. What
 * is damaged is told and then nothing is written, or it is set aside and all else is written.
 */
public final class BookExport {
  private final BookReading book;
  private final List<String> kinds;
  private final ZipWriting zip;
  private final Faults faults;
  private final SetAside aside;
  private final Map<String, Long> counts = new LinkedHashMap<>();
  private final List<String> stations = new ArrayList<>();
  private final Map<String, PhotographSheet> photographs = new TreeMap<>();

  private BookExport(BookReading book, ZipWriting zip, Faults faults, SetAside aside) {
    this.book = book;
    this.aside = aside;
    this.kinds = StoredSheets.kinds(book);
    this.zip = zip;
    this.faults = faults;
    Manifest.COUNTED.forEach(word -> counts.put(word, 0L));
  }

  /**
   * Writes a book as it stands at one moment, whatever is written to it meanwhile.
   *
   * @param clock tells when it was made
   * @throws InputException when the book is damaged or the file cannot be written; then there is no
   *     file
   * @throws leafturn.records.book.BookUnavailableException when the book cannot be read
   */
  public static Manifest write(Book book, Path file, InstantSource clock) {
    OutputFile.check(file);
    Manifest[] written = new Manifest[1];
    OutputFile.write(file, out -> written[0] = write(book, out, clock));
    return written[0];
  }

  /**
   * As {@link #write(Book, Path, InstantSource)}, but of a damaged book what is whole, with the raw
   * text of what is not; {@link Manifest#setAside} names that.
   */
  public static Manifest writeWhatIsWhole(Book book, Path file, InstantSource clock) {
    try {
      return write(book, file, clock);
    } catch (InputException damaged) {
      Manifest[] written = new Manifest[1];
      OutputFile.write(
          file,
          out -> {
            written[0] = write(book, out, clock, SetAside::of);
            if (written[0].setAside().isEmpty()) {
              throw damaged;
            }
          });
      return written[0];
    }
  }

  /** As {@link #write(Book, Path, InstantSource)}, to bytes that go elsewhere. */
  public static Manifest write(Book book, OutputStream out, InstantSource clock)
      throws IOException {
    return write(book, out, clock, reading -> SetAside.nothing());
  }

  private static Manifest write(
      Book book, OutputStream out, InstantSource clock, Function<BookReading, SetAside> aside)
      throws IOException {
    Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
    Faults faults = new Faults("The book " + book.place().shown());
    try {
      return book.snapshot(
          reading -> {
            try {
              return new BookExport(reading, new ZipWriting(out), faults, aside.apply(reading))
                  .write(now);
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private Manifest write(Instant now) throws IOException {
    refuseUnknownKinds();
    zip.derived(Members.READ_ME, ReadMe::writeTo);
    BookRow row = BookRow.of(book);
    if (row != null) {
      zip.member(Members.BOOK, out -> text(out, row.write(), 1));
    }
    zip.member(Members.PEOPLE, this::people);
    for (Kind<?> kind : Kind.all()) {
      sheets(kind);
    }
    for (String station : stations) {
      weather(station);
    }
    for (String id : StoredPhotographs.ids(book)) {
      photograph(id);
    }
    faults.throwIfAny();
    if (aside.sheets().isEmpty()) {
      new DerivedFiles(book, zip).write();
    } else {
      new DamagedFiles(book, zip, aside).write();
    }
    Manifest manifest = new Manifest(now, ProgramVersion.name(), counts, zip.members());
    zip.finish(manifest);
    return manifest;
  }

  private void refuseUnknownKinds() {
    for (String kind : kinds) {
      if (Kind.named(kind).isEmpty()) {
        faults.add(
            "it holds sheets of a kind this program does not know, %s; use a newer one."
                .formatted(Faults.quoted(kind)));
      }
    }
    faults.throwIfAny();
  }

  private long people(OutputStream out) throws IOException {
    List<PersonLine> people = PersonLine.all(book);
    for (PersonLine person : people) {
      text(out, person.without(aside::holds).write() + "\n", 1);
    }
    count("people", people.size());
    return people.size();
  }

  private <C extends Content> void sheets(Kind<C> kind) throws IOException {
    if (!kinds.contains(kind.name())) {
      return;
    }
    zip.member(
        Members.sheets(kind),
        out -> {
          long[] written = new long[1];
          StoredSheets.forEach(
              book,
              kind.name(),
              sheet -> {
                SheetLine<C> line = aside.holds(sheet.id()) ? null : line(kind, sheet);
                if (line != null) {
                  uncheckedText(out, line.write() + "\n");
                  written[0]++;
                  note(line);
                }
              });
          return written[0];
        });
  }

  private void note(SheetLine<?> line) {
    count("sheets", 1);
    count("versions", line.versions().size());
    if (line.kind().equals(Kind.STATION)) {
      stations.add(line.id());
    } else if (line.content() instanceof PhotographSheet photograph) {
      photographs.put(line.id(), photograph);
    }
  }

  /** The line of a sheet; null when it is damaged, which is then told. */
  private <C extends Content> @Nullable SheetLine<C> line(Kind<C> kind, StoredSheet sheet) {
    List<SheetLine.Version<C>> versions = new ArrayList<>();
    for (int i = 0; i < sheet.versions().size(); i++) {
      StoredVersion stored = sheet.versions().get(i);
      C content = SetAside.content(kind, stored, sheet.digests().get(i));
      if (content == null || stored.version() != i + 1) {
        faults.add(
            "%s %s, version %d, is damaged; 'leafturn book check' tells more."
                .formatted(kind, sheet.id(), stored.version()));
        return null;
      }
      versions.add(
          new SheetLine.Version<>(
              stored.withdrawn(), stored.writtenAt(), stored.writtenBy(), content));
    }
    return new SheetLine<>(aside.entry(sheet.entry()), sheet.id(), kind, versions);
  }

  private void weather(String station) throws IOException {
    List<StationDay> days = StationDays.of(book, station);
    if (days.isEmpty()) {
      return;
    }
    zip.member(
        Members.weather(station),
        out -> {
          text(out, MeasuredWeather.header() + "\n", 0);
          for (StationDay day : days) {
            text(out, MeasuredWeather.line(day.day(), day.values()) + "\n", 0);
          }
          return days.size();
        });
    count("weatherDays", days.size());
  }

  private void photograph(String id) throws IOException {
    PhotographSheet sheet = photographs.get(id);
    byte[] bytes = StoredPhotographs.bytes(book, id);
    if (sheet == null && !aside.sheets().isEmpty()) {
      zip.derived(Members.damagedPicture(id), out -> written(out, bytes));
      return;
    }
    if (sheet == null || !Sha256.of(bytes).equals(sheet.sha256())) {
      faults.add("photograph %s is damaged; 'leafturn book check' tells more.".formatted(id));
      return;
    }
    zip.member(Members.photograph(id, sheet.mediaType()), out -> written(out, bytes));
    count("photographs", 1);
  }

  private void count(String word, long more) {
    counts.merge(word, more, Long::sum);
  }

  private static long written(OutputStream out, byte[] bytes) throws IOException {
    out.write(bytes);
    return 1;
  }

  private static long text(OutputStream out, String text, long count) throws IOException {
    out.write(text.getBytes(StandardCharsets.UTF_8));
    return count;
  }

  private static void uncheckedText(OutputStream out, String text) {
    try {
      text(out, text, 1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
