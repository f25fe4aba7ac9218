package leafturn.cli;

import java.net.URI;
import java.nio.file.Path;
import java.util.Set;
import leafturn.records.InputException;
import leafturn.records.book.Book;
import org.jspecify.annotations.Nullable;

/** Serves a book as pages until the program is stopped. */
@FunctionalInterface
public interface Serving {
  /** Highest port there is. */
  int HIGHEST_PORT = 65535;

  /** The address that only this machine reaches. */
  String LOOPBACK = "127.0.0.1";

  /**
   * Where to serve and how visitors come, as the user gave it.
   *
   * @param port port to serve on, 0 for any free one
   * @param listen network address to listen on
   * @param certificate PEM file of the certificate, or null
   * @param key PEM file of its key, or null
   * @param proxy network address of a trusted proxy, or null
   * @param hosts names to be asked for by
   */
  record Where(
      int port,
      String listen,
      @Nullable Path certificate,
      @Nullable Path key,
      @Nullable String proxy,
      Set<String> hosts) {
    public Where {
      hosts = Set.copyOf(hosts);
      if (port < 0 || port > HIGHEST_PORT) {
        throw new InputException(
            "--port is %d, but must lie from 0 to %d.".formatted(port, HIGHEST_PORT));
      }
    }

    /** This machine alone. */
    static Where hereOnly(int port) {
      return new Where(port, LOOPBACK, null, null, null, Set.of());
    }
  }

  /** A place to serve at that was found good. */
  @FunctionalInterface
  interface Place {
    /**
     * Starts serving and returns at once. When the program is stopped the book is closed.
     *
     * @param atTheEnd what to do once the book is closed
     * @return where the first page is
     * @throws InputException when the port is taken or not allowed, or people could not sign in
     */
    URI serve(Book book, Runnable atTheEnd);
  }

  /**
   * Checks where to serve before any book is opened.
   *
   * @throws InputException when nobody may be served there like that
   */
  Place at(Where where);
}
