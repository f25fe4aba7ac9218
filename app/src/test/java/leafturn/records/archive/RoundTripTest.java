package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Engine;
import leafturn.records.book.Sheet;
import leafturn.records.book.StationDays;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A book, its archive, a book on another engine and its archive are the same, byte for byte. */
class RoundTripTest {
  private static final int RANDOM_BOOKS = Integer.getInteger("leafturn.books", 3);
  private static final long FIRST_SEED = Long.getLong("leafturn.seed", 20260503);
  private static final int SHEETS = 60;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"H2, POSTGRESQL", "POSTGRESQL, H2", "H2, H2"})
  void anArchiveGivesTheSameBookOnEitherEngine(Engine from, Engine to) throws IOException {
    for (long seed = FIRST_SEED; seed < FIRST_SEED + RANDOM_BOOKS; seed++) {
      Path first = folder.resolve("first-" + seed + ".zip");
      Path second = folder.resolve("second-" + seed + ".zip");
      Manifest written;
      Map<String, List<?>> before;
      try (Book book = RandomBook.open(place(from, "from" + seed), seed, SHEETS)) {
        before = told(book);
        written = BookExport.write(book, first, RandomBook.clock());
      }
      BookPlace place = place(to, "to" + seed);
      assertThat(Keeping.restore(place, first, RandomBook.clock())).isEqualTo(written);
      try (Book book = Book.open(place, InstantSource.system())) {
        BookExport.write(book, second, RandomBook.clock());
        assertThat(BookCheck.run(book).damages()).as("seed %d", seed).isEmpty();
        assertThat(told(book)).as("seed %d", seed).isEqualTo(before);
      }
      assertThat(Files.mismatch(first, second)).as("seed %d", seed).isEqualTo(-1);
      assertThat(written.count("sheets")).isGreaterThan(20);
      assertThat(written.count("versions")).isGreaterThan(written.count("sheets"));
      assertThat(written.count("weatherDays")).isPositive();
      assertThat(written.count("photographs")).isPositive();
      assertThat(written.count("people")).isPositive();
    }
  }

  @ParameterizedTest
  @EnumSource
  void anArchiveOfABookInUseIsOfOneMoment(Engine engine) throws Exception {
    AnySheet any = new AnySheet(8);
    AtomicBoolean enough = new AtomicBoolean();
    try (Book book = Book.open(place(engine, "busy"), InstantSource.system())) {
      Thread writer =
          new Thread(
              () -> {
                while (!enough.get()) {
                  book.write("Ada", writing -> addTwo(writing, any));
                }
              });
      writer.start();
      try {
        for (int i = 0; i < 10; i++) {
          Path file = folder.resolve("busy-" + i + ".zip");
          BookExport.write(book, file, InstantSource.system());
          // Two at a time were written, so every moment has an even number.
          assertThat(BookImport.check(file).count("sheets") % 2).isZero();
          assertThat(BookCheck.run(book).damages()).isEmpty();
        }
      } finally {
        enough.set(true);
        writer.join();
      }
    }
  }

  private static int addTwo(BookWriting writing, AnySheet any) {
    writing.add(Kind.STATION, any.id(), any.station());
    writing.add(Kind.STATION, any.id(), any.station());
    return 2;
  }

  /** All that a book says of its sheets and their past, in the order in which it says it. */
  private static Map<String, List<?>> told(Book book) {
    return book.read(
        reading -> {
          Map<String, List<?>> told = new TreeMap<>();
          for (Kind<?> kind : Kind.all()) {
            List<? extends Sheet<?>> sheets = reading.all(kind);
            told.put(kind.name(), sheets);
            for (Sheet<?> sheet : sheets) {
              told.put(sheet.id(), reading.history(kind, sheet.id()));
            }
          }
          for (Sheet<?> station : reading.all(Kind.STATION)) {
            told.put("weather " + station.id(), StationDays.of(reading, station.id()));
          }
          return told;
        });
  }

  private BookPlace place(Engine engine, String name) {
    return engine.newPlace(folder.resolve(name));
  }
}
