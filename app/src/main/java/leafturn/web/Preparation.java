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

  /** Begins; returns at once. */
  void start() {
    clock.scheduleWithFixedDelay(this::prepare, 0, EVERY_MS, TimeUnit.MILLISECONDS);
  }

  private void prepare() {
    try {
      rounds.prepare();
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
