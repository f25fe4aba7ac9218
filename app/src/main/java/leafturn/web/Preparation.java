package leafturn.web;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.round.BookRound;
import leafturn.reports.paper.Paper;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Has the calls of a round made before anybody asks: at the start, when something has changed and
 * when a new day begins. Has a first document set on paper too, so that the next one is quick.
 */
final class Preparation implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Preparation.class);
  private static final long EVERY_MS = 1000;

  /** The processors are for whoever waits for the first page. */
  private static final long AFTER_THE_START_MS = 1500;

  /** Nobody asks for paper before pages, and reading its type faces takes a processor seconds. */
  private static final long PAPER_AFTER_THE_START_MS = 15_000;

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
    clock.schedule(
        () -> quietly(Preparation::paper), PAPER_AFTER_THE_START_MS, TimeUnit.MILLISECONDS);
  }

  /** The first document is slow, since type faces and drawing are read for it: this one is it. */
  private static void paper() {
    String drawing =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"><text>1</text></svg>";
    try {
      Paper.of("First", "", "<h1>First</h1><table><tr><td>1</td></tr></table>" + drawing)
          .writePdf(OutputStream.nullOutputStream());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void quietly(Runnable work) {
    try {
      work.run();
    } catch (BookUnavailableException gone) {
      LOG.debug("nothing is prepared: {}", gone.getMessage()); // whoever asks for a page is told
    } catch (RuntimeException fault) {
      LOG.error("something could not be prepared: {}", fault, fault);
    }
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
