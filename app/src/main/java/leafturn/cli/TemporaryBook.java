package leafturn.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import leafturn.records.book.BookPlace;

/** A book in a folder of its own among the system's temporary files, for as long as it is used. */
final class TemporaryBook implements AutoCloseable {
  private final Path folder;
  private final Book book;

  private TemporaryBook(Path folder, Book book) {
    this.folder = folder;
    this.book = book;
  }

  /**
   * A new, empty book.
   *
   * @throws InputException when there is no room for it
   */
  static TemporaryBook open(Clock clock) {
    try {
      Path folder = Files.createTempDirectory("leafturn-demo-");
      return new TemporaryBook(folder, Book.open(BookPlace.of(folder), clock));
    } catch (IOException e) {
      throw new InputException(
          "The folder for temporary files takes no book: "
              + e.getMessage()
              + "; give another with LEAFTURN_JAVA_OPTIONS=-Djava.io.tmpdir=FOLDER.");
    }
  }

  Book book() {
    return book;
  }

  /** Removes the folder of a book that is closed. */
  void remove() {
    try (Stream<Path> files = Files.walk(folder)) {
      List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
      for (Path file : deepestFirst) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the temporary book could not be removed", e);
    }
  }

  /** Closes the book and removes its folder. */
  @Override
  public void close() {
    book.close();
    remove();
  }
}
