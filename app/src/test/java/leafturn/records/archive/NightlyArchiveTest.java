package leafturn.records.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatList;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leafturn.records.book.ArchiveShelf;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.sheet.AnySheet;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NightlyArchiveTest {
  private static final ZoneId PARIS = ZoneId.of("Europe/Paris");

  @TempDir Path folder;

  private final AnySheet any = new AnySheet(5);
  private Instant now = Instant.parse("2026-05-03T20:00:00Z");
  private Book book;
  private ArchiveShelf shelf;
  private NightlyArchive nightly;

  @BeforeEach
  void begin() {
    book = Book.open(BookPlace.of(folder), () -> now);
    shelf = new ArchiveShelf(folder.resolve("archives"));
    nightly = new NightlyArchive(book, shelf, () -> now, PARIS);
    enter();
  }

  @AfterEach
  void end() {
    nightly.close();
    book.close();
  }

  @Test
  void itIsWrittenOnceANightWhenTheBookIsQuiet() {
    assertThat(nightly.write()).isPresent();
    assertThat(lookEveryMinuteUntil("2026-05-03T23:59:00Z")).isEmpty();
    enter();
    // Two o'clock in Paris is midnight in UTC; five quiet minutes later it is written.
    Optional<Path> written = lookEveryMinuteUntil("2026-05-04T00:10:00Z");
    assertThat(written).hasValue(shelf.folder().resolve("book-2026-05-04T00-05-00Z.zip"));
    assertThat(BookImport.check(written.orElseThrow()).count("sheets")).isEqualTo(2);
    enter();
    assertThat(lookEveryMinuteUntil("2026-05-04T23:00:00Z")).isEmpty();
  }

  @Test
  void aNightThatWasMissedIsMadeUpForAndABusyOneIsNotWaitedForForEver() {
    nightly.write();
    now = Instant.parse("2026-05-06T09:00:00Z");
    enter();
    assertThat(nightly.look()).isEmpty();
    now = now.plus(Duration.ofMinutes(1));
    assertThat(nightly.look()).isPresent();
  }

  @Test
  void anUnchangedBookIsNotWrittenTwice() {
    assertThat(nightly.write()).isPresent();
    now = now.plus(Duration.ofDays(1));
    assertThat(nightly.write()).isEmpty();
    assertThatList(shelf.archives()).hasSize(1);
  }

  @Test
  void aDamagedArchiveIsNotTakenForTheSame() throws IOException {
    Path first = nightly.write().orElseThrow();
    byte[] bytes = Files.readAllBytes(first);
    Files.write(first, Arrays.copyOf(bytes, bytes.length / 2));
    now = now.plus(Duration.ofMinutes(1));
    assertThat(nightly.write()).isPresent();
  }

  @Test
  void aBookThatHoldsLessThanItsArchiveHasLostEntries() throws IOException {
    enter();
    Path archive = nightly.write().orElseThrow();
    assertThatList(BookCheck.run(book).damages()).isEmpty();
    nightly.close();
    book.close();
    Files.delete(folder.resolve("book.mv.db"));
    book = Book.open(BookPlace.of(folder), () -> now);
    assertThatList(BookCheck.run(book).damages())
        .singleElement()
        .asString()
        .contains("The book holds 0 versions of sheets, but its archive " + archive + " has 2");
    Files.writeString(archive, "spoilt");
    assertThatList(BookCheck.run(book).damages())
        .singleElement()
        .asString()
        .contains("The newest archive cannot be read");
  }

  @Test
  void aCleanStopWritesWhatWasChanged() {
    nightly.write();
    now = now.plus(Duration.ofHours(1));
    enter();
    nightly.close();
    assertThatList(shelf.archives()).hasSize(1);
    assertThat(BookImport.check(shelf.archives().get(0).file()).count("sheets")).isEqualTo(2);
  }

  @Test
  void fourteenDaysAndTwelveMonthsStay() throws IOException {
    Files.createDirectories(shelf.folder());
    for (int day = 0; day < 500; day++) {
      for (int hour : List.of(1, 20)) {
        Instant madeAt = now.minus(Duration.ofDays(day)).minus(Duration.ofHours(hour));
        Files.createFile(shelf.folder().resolve(ArchiveShelf.name(madeAt)));
      }
    }
    Files.createFile(shelf.folder().resolve("my own notes.zip"));
    Path newest = nightly.write().orElseThrow();
    List<Path> left = shelf.archives().stream().map(ArchiveShelf.Kept::file).toList();
    assertThatList(left).first().isEqualTo(newest);
    // 14 days in April and May, of which the newest is also May's and another April's, and 10 more.
    assertThatList(left).hasSize(24);
    assertThat(left.get(23).getFileName()).hasToString("book-2025-06-30T19-00-00Z.zip");
    assertThat(shelf.folder().resolve("my own notes.zip")).exists();
  }

  private Optional<Path> lookEveryMinuteUntil(String time) {
    Optional<Path> written = Optional.empty();
    for (Instant end = Instant.parse(time); now.isBefore(end); ) {
      now = now.plus(Duration.ofMinutes(1));
      Optional<Path> one = nightly.look();
      written = one.isPresent() ? one : written;
    }
    return written;
  }

  private void enter() {
    String id = any.id();
    book.write("Ada", writing -> writing.add(Kind.STATION, id, any.station()));
  }
}
