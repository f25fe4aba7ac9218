package leafturn.cli;

import java.net.URI;
import leafturn.records.InputException;
import leafturn.records.book.Book;

/** Serves a book as pages until the program is stopped. */
@FunctionalInterface
public interface Serving {
  /** Highest port there is. */
  int HIGHEST_PORT = 65535;

  /**
   * Starts serving and returns at once. When the program is stopped the book is closed.
   *
   * @param port port to serve on, 0 for any free one
   * @param atTheEnd what to do once the book is closed
   * @return where the first page is
   * @throws InputException when the port is taken or not allowed
   */
  URI start(Book book, int port, Runnable atTheEnd);

  /**
   * Checks a port before anything is opened.
   *
   * @throws InputException when there is no such port
   */
  static void checkPort(int port) {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new InputException(
          "--port is %d, but must lie from 0 to %d.".formatted(port, HIGHEST_PORT));
    }
  }
}
