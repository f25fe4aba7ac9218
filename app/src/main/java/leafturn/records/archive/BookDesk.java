package leafturn.records.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import leafturn.records.InputException;
import leafturn.records.archive.BookDoor.Question;
import leafturn.records.archive.BookDoor.Wanted;
import leafturn.records.book.Book;
import leafturn.records.book.BookUnavailableException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Answers other processes that ask for an archive or a check of a folder's book while this one
 * holds it.
 */
public final class BookDesk implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(BookDesk.class);
  private static final long LOOK_EVERY_MS = 250;
  private static final long LONGEST_END_S = 10;

  private final Book book;
  private final BookDoor door;
  private final InstantSource clock;
  private final ScheduledExecutorService clerk;

  private BookDesk(Book book, BookDoor door, InstantSource clock) {
    this.book = book;
    this.door = door;
    this.clock = clock;
    this.clerk =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              Thread thread = new Thread(task, "book-desk");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Begins to answer for a book in a folder.
   *
   * @throws InputException when the folder takes no files
   */
  public static BookDesk open(Book book, Path folder, InstantSource clock) {
    BookDoor door = new BookDoor(folder);
    try {
      door.make();
    } catch (IOException e) {
      throw new InputException(folder + ": the folder cannot be written to; choose another.");
    }
    door.sweep();
    BookDesk desk = new BookDesk(book, door, clock);
    desk.clerk.scheduleWithFixedDelay(
        desk::look, LOOK_EVERY_MS, LOOK_EVERY_MS, TimeUnit.MILLISECONDS);
    return desk;
  }

  private void look() {
    for (Question question : door.waiting()) {
      if (door.take(question)) {
        answer(question);
      }
    }
  }

  private void answer(Question question) {
    try {
      if (question.wanted() == Wanted.ARCHIVE) {
        BookExport.writeWhatIsWhole(book, door.answer(question), clock);
      } else {
        put(question, BookCheck.run(book).write());
      }
    } catch (InputException e) {
      refuse(question, e.faults());
    } catch (BookUnavailableException e) {
      refuse(question, List.of(String.valueOf(e.getMessage())));
    } catch (IOException | RuntimeException e) {
      LOG.error("A question of another process could not be answered", e);
      refuse(question, List.of("The server failed on this; its own messages tell more."));
    }
  }

  private void put(Question question, String text) throws IOException {
    Path part = Files.createTempFile(door.answer(question).getParent(), "answer", ".part");
    try {
      Files.writeString(part, text, StandardCharsets.UTF_8);
      Files.move(part, door.answer(question), StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  private void refuse(Question question, List<String> sentences) {
    try {
      door.refuse(question, sentences);
    } catch (IOException e) {
      LOG.error("A question of another process could not be answered", e);
    }
  }

  /** Answers what is being answered and then no more. */
  @Override
  public void close() {
    clerk.shutdown();
    try {
      if (!clerk.awaitTermination(LONGEST_END_S, TimeUnit.SECONDS)) {
        LOG.warn("A question of another process was not answered before the stop.");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
