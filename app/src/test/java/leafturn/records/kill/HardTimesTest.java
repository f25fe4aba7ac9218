package leafturn.records.kill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import leafturn.records.InputException;
import leafturn.records.archive.BookCheck;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.book.Engine;
import leafturn.records.book.PostgresqlServer;
import leafturn.records.book.Sheet;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import leafturn.web.LeafturnServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Full disks, folders that take nothing, a database that goes away, a clock that jumps. */
class HardTimesTest {
  private static final int BLOCK_BYTES = 512;

  @TempDir private Path folder;

  /** Begins a book with the demo; id of one of its lawns. */
  private static String demoLawn(BookPlace place) {
    try (Book book = Book.open(place, Clock.systemUTC())) {
      DemoBook.write(book);
      return book.read(reading -> reading.all(Kind.LAWN).get(0).id());
    }
  }

  /** Blocks of a file that may still grow by 300 kB. */
  private long blocks() throws IOException {
    return Files.size(folder.resolve("book").resolve("book.mv.db")) / BLOCK_BYTES + 600;
  }

  /** Holds that the book opens undamaged, with all that it acknowledged to a writer. */
  private static void assertNothingLost(BookPlace place, WriterProcess writer) {
    try (Book book = Book.open(place, Clock.systemUTC())) {
      assertThat(writer.missingIn(book)).isEmpty();
      assertThat(BookCheck.run(book).damages()).isEmpty();
    }
  }

  @Test
  void aFullDiskIsToldAndNothingAcknowledgedIsLost() throws Exception {
    BookPlace place = Engine.H2.newPlace(folder);
    String lawn = demoLawn(place);

    WriterProcess writer = WriterProcess.start(place.given(), lawn, 1, "ulimit -f " + blocks());
    writer.await();

    assertThat(writer.refusal())
        .contains("cannot be written now", "the disk is full")
        .doesNotContain("Exception");
    assertThat(writer.acknowledgements()).isPositive();
    assertNothingLost(place, writer);
  }

  @Test
  void aBookWhoseDiskWasFullOpensByItselfOnceThereIsRoomAgain() throws Exception {
    BookPlace place = Engine.H2.newPlace(folder);
    String lawn = demoLawn(place);

    WriterProcess writer =
        WriterProcess.start(place.given(), lawn, 2, "ulimit -S -f " + blocks(), "on");
    writer.awaitRefusal();
    long before = writer.acknowledgements();
    Process room =
        new ProcessBuilder("prlimit", "--fsize=unlimited", "--pid", Long.toString(writer.id()))
            .inheritIO()
            .start();
    assertThat(room.waitFor()).isZero();
    writer.await();

    assertThat(writer.refusal()).contains("the disk is full", "make room on it and try again");
    assertThat(writer.acknowledgements()).isGreaterThanOrEqualTo(before + DiligentWriter.GOES_ON);
    assertNothingLost(place, writer);
  }

  @Test
  void whoeverIsInTheMiddleOfSomethingAsTheDiskFillsIsAnswered() throws Exception {
    BookPlace place = Engine.H2.newPlace(folder);
    String lawn = demoLawn(place);

    WriterProcess writer =
        WriterProcess.start(place.given(), lawn, 3, "ulimit -f " + blocks(), "crossed");
    assertTimeoutPreemptively(Duration.ofMinutes(2), writer::await);

    assertThat(writer.refusal()).contains("the disk is full");
    assertThat(writer.answers())
        .hasSize(3)
        .anyMatch(answer -> answer.contains("gave up"))
        .anyMatch(answer -> answer.contains("cannot be written now: the disk is full"));
    assertNothingLost(place, writer);
  }

  @Test
  void aFolderThatCannotBeWrittenToIsToldBeforeAnythingIsBegun() throws Exception {
    Path file = Files.writeString(folder.resolve("taken"), "not a folder");
    for (Path place : List.of(file, file.resolve("inside"), Path.of("/proc/no-book-here"))) {
      assertThatThrownBy(() -> Book.open(BookPlace.of(place), Clock.systemUTC()))
          .isInstanceOf(InputException.class)
          .hasMessageMatching(".*: the folder cannot be (made|written to); choose another\\.");
    }
  }

  @Test
  void aDatabaseThatGoesAwayIsToldOnThePageAndServedAgainOnceItIsBack() throws Exception {
    BookPlace place = Engine.POSTGRESQL.newPlace(folder);
    try (Book book = Book.open(place, Clock.systemUTC());
        LeafturnServer server = LeafturnServer.start(book, Clock.systemUTC(), 0)) {
      DemoBook.write(book);
      assertThat(get(server, "/").statusCode()).isEqualTo(200);
      PostgresqlServer.running().crash();
      try {
        HttpResponse<String> gone = get(server, "/lawns/linden-house-back");
        assertThat(gone.statusCode()).isEqualTo(503);
        assertThat(gone.body())
            .contains("The book does not answer.")
            .doesNotContain("Exception", "\tat ");
        assertThatThrownBy(() -> book.write("test", writing -> writing.all(Kind.LAWN)))
            .isInstanceOf(BookUnavailableException.class)
            .hasMessageContaining("Nothing of this was saved");
      } finally {
        PostgresqlServer.running().start();
      }
      assertThat(get(server, "/lawns/linden-house-back").statusCode()).isEqualTo(200);
      assertThat(BookCheck.run(book).damages()).isEmpty();
    }
  }

  @Test
  void aClockThatJumpsBackLosesNothingAndKeepsTheOrderOfVersions() {
    AtomicReference<Instant> now = new AtomicReference<>(Instant.parse("2026-05-03T10:00:00Z"));
    try (Book book = Book.open(Engine.H2.newPlace(folder), now::get)) {
      DemoBook.write(book);
      Sheet<LawnSheet> lawn = book.read(reading -> reading.all(Kind.LAWN).get(0));
      now.set(Instant.parse("2025-01-01T00:00:00Z"));
      book.write("test", writing -> writing.withdraw(Kind.LAWN, lawn.id(), 1));
      now.set(Instant.parse("2026-05-03T10:00:01Z"));
      book.write("test", writing -> writing.restore(Kind.LAWN, lawn.id(), 2));
      List<Sheet<LawnSheet>> history = book.read(reading -> reading.history(Kind.LAWN, lawn.id()));
      assertThat(history).extracting(Sheet::version).containsExactly(3, 2, 1);
      assertThat(history).extracting(Sheet::content).containsOnly(lawn.content());
      assertThat(BookCheck.run(book).damages()).isEmpty();
    }
  }

  private static HttpResponse<String> get(LeafturnServer server, String path) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(server.address().resolve(path))
            .timeout(Duration.ofSeconds(60))
            .build();
    return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
  }
}
