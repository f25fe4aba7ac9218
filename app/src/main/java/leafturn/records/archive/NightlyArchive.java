package leafturn.records.archive;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import leafturn.records.InputException;
import leafturn.records.book.ArchiveShelf;
import leafturn.records.book.Book;
import leafturn.records.book.BookReading;
import leafturn.records.book.BookUnavailableException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Writes a book's archive onto its shelf every night and at a clean stop, so that no upgrade and no
 * damaged file takes more than a day. After a night in which nothing ran, it is written at the next
 * quiet moment.
 */
public final class NightlyArchive implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(NightlyArchive.class);
  private static final LocalTime NIGHT = LocalTime.of(2, 0);
  private static final Duration QUIET = Duration.ofMinutes(5);
  private static final Duration AT_THE_LATEST = Duration.ofHours(3);
  private static final Duration AFTER_A_FAULT = Duration.ofHours(1);
  private static final long LONGEST_STOP_S = 10;

  private final Book book;
  private final ArchiveShelf shelf;
  private final InstantSource clock;
  private final ZoneId zone;
  private final ScheduledExecutorService watchman;

  private State state = new State(Map.of(), List.of());
  private Instant unchangedSince = Instant.MIN;
  private Instant doneAt = Instant.MIN;
  private @Nullable State archived;
  private Instant pausedUntil = Instant.MIN;

  /** What differs whenever the book does; people raise no revision. */
  private record State(Map<String, Long> revisions, List<PersonLine> people) {
    static State of(BookReading book) {
      return new State(book.revisions(), PersonLine.all(book));
    }
  }

  /**
   * @param shelf where the archives are kept
   * @param clock tells the time
   * @param zone where it is night
   */
  public NightlyArchive(Book book, ArchiveShelf shelf, InstantSource clock, ZoneId zone) {
    this.book = book;
    this.shelf = shelf;
    this.clock = clock;
    this.zone = zone;
    this.watchman =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              Thread thread = new Thread(task, "nightly-archive");
              thread.setDaemon(true);
              return thread;
            });
  }

  /** Begins to look every minute whether it is time. */
  public void start() {
    watchman.scheduleWithFixedDelay(this::lookQuietly, 1, 1, TimeUnit.MINUTES);
  }

  private void lookQuietly() {
    try {
      look();
    } catch (InputException | BookUnavailableException | UncheckedIOException e) {
      LOG.warn("The nightly archive could not be written: {}", e.getMessage());
      pausedUntil = clock.instant().plus(AFTER_A_FAULT);
    } catch (RuntimeException e) {
      LOG.error("The nightly archive could not be written", e);
      pausedUntil = clock.instant().plus(AFTER_A_FAULT);
    }
  }

  /**
   * Writes an archive when one is due and the book is quiet: not changed for five minutes, or three
   * hours after it became due.
   *
   * @return the archive when one was written
   */
  synchronized Optional<Path> look() {
    Instant now = clock.instant();
    State current = book.read(State::of);
    if (!current.equals(state)) {
      state = current;
      unchangedSince = now;
    }
    Instant due = lastNight(now);
    if (!lastDone().isBefore(due) || now.isBefore(pausedUntil)) {
      return Optional.empty();
    }
    boolean quiet = !unchangedSince.plus(QUIET).isAfter(now);
    boolean late = !now.isBefore(due.plus(AT_THE_LATEST)) && !unchangedSince.equals(now);
    return quiet || late ? write() : Optional.empty();
  }

  private Instant lastNight(Instant now) {
    ZonedDateTime local = now.atZone(zone);
    ZonedDateTime tonight = local.with(NIGHT);
    return (tonight.isAfter(local) ? tonight.minusDays(1) : tonight).toInstant();
  }

  private Instant lastDone() {
    Instant written = shelf.newest().map(ArchiveShelf.Kept::madeAt).orElse(Instant.MIN);
    return written.isAfter(doneAt) ? written : doneAt;
  }

  /**
   * Writes an archive now, as {@link Shelving#write} does.
   *
   * @return the archive when one was written
   * @throws InputException when the book is damaged or the shelf takes no files
   */
  synchronized Optional<Path> write() {
    State current = book.read(State::of);
    Optional<Path> written = Shelving.write(book, shelf, clock, zone);
    doneAt = clock.instant();
    archived = current;
    return written;
  }

  /**
   * Stops looking, and writes an archive of what was changed since the last one when that takes no
   * more than a few seconds.
   */
  @Override
  public void close() {
    if (watchman.isShutdown()) {
      return;
    }
    watchman.submit(this::writeIfChanged);
    watchman.shutdown();
    try {
      if (!watchman.awaitTermination(LONGEST_STOP_S, TimeUnit.SECONDS)) {
        // Not interrupted: that would take the database's file from under those who close it.
        LOG.warn("The archive at the stop was not finished in time; the one before stays.");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void writeIfChanged() {
    try {
      if (!book.read(State::of).equals(archived)) {
        write();
      }
    } catch (InputException | BookUnavailableException | UncheckedIOException e) {
      LOG.warn("The archive at the stop could not be written: {}", e.getMessage());
    } catch (RuntimeException e) {
      LOG.error("The archive at the stop could not be written", e);
    }
  }
}
