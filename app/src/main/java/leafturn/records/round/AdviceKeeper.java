package leafturn.records.round;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import leafturn.advice.call.Call;
import leafturn.advice.call.LawnOnRound;
import leafturn.quantity.Units;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookUnavailableException;
import leafturn.records.book.BookWriting;
import leafturn.records.book.Sheet;
import leafturn.records.book.StaleSheetException;
import leafturn.records.sheet.AdviceSheet;
import leafturn.records.sheet.AdviceSheet.Way;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LawnSheet;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the advice that was given, as it was given: one sheet for each lawn, day and changed
 * content. Whoever reads a page does not wait for it: what was given is written within a second, by
 * a thread of its own, many lawns at a time. While the book cannot be written it is kept in memory
 * and tried again.
 */
public final class AdviceKeeper implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(AdviceKeeper.class);
  private static final long EVERY_MS = 500;
  private static final long LAST_WRITING_MS = 5000;

  /** Beyond so much unwritten advice the oldest is given up. */
  private static final int MOST_WAITING = 10_000;

  private final Book book;

  /** The call that each lawn's readers of a unit were given last: the same one is known at once. */
  private final Map<Reader, Call> given = new ConcurrentHashMap<>();

  private final Deque<Given> waiting = new ArrayDeque<>();
  private boolean failed;
  private final ScheduledExecutorService writer =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "advice");
            thread.setDaemon(true);
            return thread;
          });

  private record Reader(String lawn, Units units) {}

  private record Given(String lawn, String by, Way way, Call call) {}

  /** Keeps what is given from now on in this book. */
  public AdviceKeeper(Book book) {
    this.book = book;
    writer.scheduleWithFixedDelay(this::write, EVERY_MS, EVERY_MS, TimeUnit.MILLISECONDS);
  }

  /**
   * Notes that somebody was given the advice for some lawns; returns at once.
   *
   * @param by who was given it, 1 to 80 characters
   */
  public void given(List<LawnOnRound> lawns, Way way, String by) {
    for (LawnOnRound lawn : lawns) {
      Reader reader = new Reader(lawn.slug(), lawn.call().units());
      if (given.put(reader, lawn.call()) != lawn.call()) {
        note(new Given(lawn.slug(), by, way, lawn.call()));
      }
    }
  }

  private void note(Given advice) {
    synchronized (waiting) {
      waiting.addLast(advice);
      if (waiting.size() > MOST_WAITING) {
        waiting.removeFirst();
      }
    }
  }

  /** Writes what waits, in the order in which it was given. */
  private synchronized void write() {
    List<Given> taken;
    synchronized (waiting) {
      taken = new ArrayList<>(waiting);
      waiting.clear();
    }
    int from = 0;
    while (from < taken.size()) {
      int to = from + 1;
      while (to < taken.size() && taken.get(to).by().equals(taken.get(from).by())) {
        to++;
      }
      write(taken.subList(from, to));
      from = to;
    }
  }

  /** Writes what one person was given; what could not be written waits again. */
  private void write(List<Given> advice) {
    String by = advice.get(0).by();
    try {
      book.write(by, writing -> written(writing, advice));
      failed = false;
    } catch (StaleSheetException | InputException | BookUnavailableException later) {
      if (!failed) {
        failed = true;
        LOG.warn("advice that was given is not kept yet: {}", later.getMessage());
      }
      advice.forEach(this::note);
    } catch (RuntimeException fault) {
      LOG.error("advice given to {} could not be kept", by, fault);
    }
  }

  private static int written(BookWriting writing, List<Given> advice) {
    Map<String, Double> thresholds = LawnCalls.thresholds(writing);
    int kept = 0;
    for (Given one : advice) {
      Sheet<LawnSheet> lawn = writing.at(Kind.LAWN, one.lawn()).orElse(null);
      if (lawn != null) {
        kept += keep(writing, GivenAdvice.of(lawn.id(), one.call(), one.way(), thresholds));
      }
    }
    return kept;
  }

  /** Adds it unless the last advice of the day says the same. */
  private static int keep(BookWriting writing, AdviceSheet advice) {
    List<AdviceSheet> ofTheDay = new ArrayList<>();
    for (Sheet<AdviceSheet> sheet : writing.ofLawnSince(Kind.ADVICE, advice.lawn(), advice.day())) {
      if (sheet.content().day().equals(advice.day())) {
        ofTheDay.add(sheet.content());
      }
    }
    int before = ofTheDay.size();
    if (before > 0 && ofTheDay.get(before - 1).saysTheSameAs(advice)) {
      return 0;
    }
    writing.add(Kind.ADVICE, id(advice.lawn(), advice.day(), before + 1), advice);
    return 1;
  }

  /** The same for two programs that serve one book, so that neither keeps what the other has. */
  private static String id(String lawn, LocalDate day, int number) {
    byte[] name = ("advice %s %s %d".formatted(lawn, day, number)).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(name).toString();
  }

  /** Writes what waits and ends. */
  @Override
  public void close() {
    writer.shutdown();
    try {
      if (!writer.awaitTermination(LAST_WRITING_MS, TimeUnit.MILLISECONDS)) {
        writer.shutdownNow();
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    write();
  }
}
