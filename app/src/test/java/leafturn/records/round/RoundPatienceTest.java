package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import leafturn.advice.call.LawnWithoutCall;
import leafturn.advice.call.RoundOfLawns;
import leafturn.quantity.Units;
import leafturn.records.book.Book;
import leafturn.records.book.Engine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long somebody who looks at the round waits for advice that is being worked out. */
class RoundPatienceTest {
  private static final String LAWN = "linden-house-back";
  private static final Duration PATIENCE = Duration.ofMinutes(1);
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2015-06-01T11:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder;

  @Test
  void whoeverDoesNotWaitIsToldThatTheCallIsBeingMade() {
    try (Book book = demo();
        BookRound rounds = new BookRound(book, CLOCK)) {
      RoundOfLawns soon = rounds.today(register -> register, Units.METRIC, Duration.ZERO);
      assertThat(soon.withoutCall())
          .isNotEmpty()
          .allMatch(lawn -> lawn.why().contains("being worked out"));
      assertThat(rounds.today().lawns()).hasSize(6);
    }
  }

  @Test
  void whoeverLooksAtALawnInACrowdDoesNotWait() throws Exception {
    UnaryOperator<Register> theLawn = register -> register.onlyLawn(LAWN);
    CountDownLatch looking = new CountDownLatch(Workers.COUNT);
    CountDownLatch end = new CountDownLatch(1);
    ExecutorService others = Executors.newFixedThreadPool(Workers.COUNT);
    try (Book book = demo();
        BookRound rounds = new BookRound(book, CLOCK, Duration.ZERO)) {
      List<Future<RoundOfLawns>> crowd = new ArrayList<>();
      for (int i = 0; i < Workers.COUNT; i++) {
        crowd.add(
            others.submit(
                () ->
                    rounds.ofLawn(
                        register -> {
                          looking.countDown();
                          await(end);
                          return theLawn.apply(register);
                        },
                        Units.METRIC,
                        PATIENCE)));
      }
      await(looking);

      assertThat(rounds.ofLawn(theLawn, Units.METRIC, PATIENCE).withoutCall())
          .extracting(LawnWithoutCall::underWay)
          .containsExactly(true);
      end.countDown();

      for (Future<RoundOfLawns> other : crowd) {
        assertThat(other.get().lawns()).hasSize(1);
      }
      assertThat(rounds.ofLawn(theLawn, Units.METRIC, PATIENCE).lawns()).hasSize(1);
    } finally {
      end.countDown();
      others.shutdownNow();
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      assertThat(latch.await(1, TimeUnit.MINUTES)).isTrue();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private Book demo() {
    Book book = Book.open(Engine.H2.newPlace(folder), CLOCK);
    DemoBook.write(book);
    return book;
  }
}
