package leafturn.web;

import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.round.BookRound;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Has the calls of a round made before anybody asks: at the start, when something has changed and
 * when a new day begins.
 */
final class Preparation implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Preparation.class);
  private static final long EVERY_MS = 1000;

  /** The processors are for whoever waits for the first page. */
  private static final long AFTER_THE_START_MS = 1500;

  private final BookRound rounds;
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "preparation");
            thread.setDaemon(true);
            return thread;
          });

  Preparation(BookRound rounds) {
    this.rounds = rounds;
  }

  /** Begins soon; returns at once. */
  void start() {
    clock.execute(() -> quietly(rounds::register)); // the longest reading of all
    clock.scheduleWithFixedDelay(
        () -> quietly(rounds::prepare), AFTER_THE_START_MS, EVERY_MS, TimeUnit.MILLISECONDS);
  }

  private static void quietly(Runnable work) {
    try {
      work.run();
    } catch (BookUnavailableException gone) {
      LOG.debug("nothing is prepared: {}", gone.getMessage()); // whoever asks for a page is told
    } catch (RuntimeException fault) {
      LOG.error("the round could not be prepared: {}", fault, fault);
    }
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
