package leafturn.records.kill;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import leafturn.records.archive.BookCheck;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;
import leafturn.records.book.Engine;
import leafturn.records.book.PostgresqlServer;
import leafturn.records.round.DemoBook;
import leafturn.records.sheet.Kind;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Killed while it writes, time and again: every entry that was acknowledged is there, and the book
 * is whole. {@code bench/kill} runs it with 200 kills.
 */
class KilledWriterTest {
  private static final int KILLS = Integer.getInteger("leafturn.kills", 8);
  private static final int LONGEST_LIFE_MS = 1200;
  private static final int SERVER_CRASH_EVERY = 4;

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource
  void whatWasAcknowledgedSurvives(Engine engine) throws Exception {
    BookPlace place = engine.newPlace(folder);
    String lawn = begun(place);
    Random moments = new Random(9);
    long acknowledged = 0;
    for (int kill = 1; kill <= KILLS; kill++) {
      WriterProcess writer = WriterProcess.start(place.given(), lawn, kill, "true");
      TimeUnit.MILLISECONDS.sleep(moments.nextInt(LONGEST_LIFE_MS));
      if (engine == Engine.POSTGRESQL && kill % SERVER_CRASH_EVERY == 0) {
        PostgresqlServer.running().crash();
        writer.await();
        PostgresqlServer.running().start();
      } else {
        writer.kill();
      }
      acknowledged += writer.acknowledgements();
      try (Book book = Book.open(place, Clock.systemUTC())) {
        assertThat(writer.missingIn(book)).as("after kill %d", kill).isEmpty();
        assertThat(BookCheck.run(book).damages()).as("after kill %d", kill).isEmpty();
      }
    }
    assertThat(acknowledged).as("acknowledged before the kills").isGreaterThan(KILLS);
    System.out.printf(
        "%s: %d kills, %d acknowledged writes, none lost%n", engine, KILLS, acknowledged);
  }

  private static String begun(BookPlace place) {
    try (Book book = Book.open(place, Clock.systemUTC())) {
      DemoBook.write(book);
      return book.read(reading -> reading.all(Kind.LAWN).get(0).id());
    }
  }
}
