package leafturn.records.book;

import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.InstantSource;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/**
 * A book that lies open. Safe for use from several threads; a folder's book is held by one process
 * at a time, a server's by any number.
 */
public final class Book implements AutoCloseable {
  private static final int MOST_TRIES = 4;

  private final BookPlace place;
  private final BookPool pool;
  private final Jdbi jdbi;
  private final InstantSource clock;

  private Book(BookPlace place, BookPool pool, InstantSource clock) {
    this.place = place;
    this.pool = pool;
    this.jdbi = Jdbi.create(pool);
    if (place.folder() != null) {
      jdbi.setTransactionHandler(new FolderTransactions(pool));
    }
    this.clock = clock;
  }

  /**
   * Opens a book, beginning an empty one where there is none, and brings its tables up to date.
   *
   * @param clock tells when something is written
   * @throws leafturn.records.InputException when the place cannot hold a book
   * @throws BookUnavailableException when it is held by another process or cannot be reached
   */
  public static Book open(BookPlace place, InstantSource clock) {
    String url = place.url();
    BookPool pool = null;
    try {
      pool = new BookPool(place, url);
      Tables.bringUpToDate(pool.source());
      return new Book(place, pool, clock);
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
      // A damaged file makes the database throw whatever its bytes lead to.
      if (pool != null) {
        pool.close();
      }
      throw BookFaults.notOpened(place, e);
    }
  }

  /**
   * True when a book has been begun at a place; looking begins none.
   *
   * @throws BookUnavailableException when the database server does not answer
   */
  public static boolean begun(BookPlace place) {
    if (place.folder() != null) {
      return place.begun();
    }
    try (Connection connection = DriverManager.getConnection(place.url());
        ResultSet table =
            connection.getMetaData().getTables(null, connection.getSchema(), "sheet", null)) {
      return table.next();
    } catch (SQLException e) {
      throw BookFaults.notOpened(place, e);
    }
  }

  /** Where it lies. */
  public BookPlace place() {
    return place;
  }

  /**
   * Reads from the book on one connection. The function may run again on another one when a
   * connection turns out to be lost, as all are after the database was started anew.
   *
   * @throws BookUnavailableException when the database cannot be reached
   */
  public <T> T read(Function<BookReading, T> reading) {
    return read(
        () -> jdbi.inTransaction(handle -> reading.apply(new BookReading(handle))), () -> true);
  }

  private <T> T read(Supplier<T> transaction, BooleanSupplier repeatable) {
    for (int tries = 1; ; tries++) {
      HikariDataSource used = pool.source();
      try {
        return transaction.get();
      } catch (JdbiException e) {
        boolean again = BookFaults.connectionLost(e) || openedAnew(used, e);
        if (!again || !repeatable.getAsBoolean() || tries > BookPool.MOST_CONNECTIONS) {
          throw BookFaults.notRead(place, e);
        }
      }
    }
  }

  /** True when a folder's book, which its database had closed, is open again. */
  private boolean openedAnew(HikariDataSource used, JdbiException fault) {
    boolean ofNoUse =
        used.isClosed()
            || used != pool.source()
            || BookFaults.storeClosed(fault)
            || BookFaults.ofTheDisk(fault);
    if (place.folder() == null || !ofNoUse) {
      return false;
    }
    try {
      return pool.openAnew(used);
    } catch (RuntimeException e) {
      throw BookFaults.notOpenedAnew(place, e);
    }
  }

  /**
   * Reads much from the book as it stands at one moment, whatever is written meanwhile. The
   * function runs once.
   *
   * @throws BookUnavailableException when the database cannot be reached or is damaged
   */
  public <T> T snapshot(Function<BookReading, T> reading) {
    // What H2 calls serializable and PostgreSQL repeatable read are both the view of one moment.
    TransactionIsolationLevel level =
        place.folder() == null
            ? TransactionIsolationLevel.REPEATABLE_READ
            : TransactionIsolationLevel.SERIALIZABLE;
    AtomicBoolean begun = new AtomicBoolean();
    return read(
        () ->
            jdbi.inTransaction(
                level,
                handle -> {
                  begun.set(true);
                  return reading.apply(new BookReading(handle));
                }),
        () -> !begun.get());
  }

  /**
   * Writes to the book: all of it or nothing. The function may run again when another writer was in
   * the way, so it must do nothing but use what it is given.
   *
   * @param by who writes, 1 to 80 characters
   * @throws StaleSheetException when somebody else changed a sheet first
   * @throws leafturn.records.InputException when what is written does not fit the book
   * @throws BookUnavailableException when the database cannot be reached or written
   */
  public <T> T write(String by, Function<BookWriting, T> writing) {
    if (pool.gone()) {
      throw BookFaults.gone(place);
    }
    if (!place.hasRoom()) {
      throw BookFaults.noRoom(place);
    }
    for (int tries = 1; ; tries++) {
      HikariDataSource used = pool.source();
      AtomicBoolean complete = new AtomicBoolean();
      try {
        return jdbi.inTransaction(
            handle -> {
              T result = written(handle, by, writing);
              complete.set(true);
              return result;
            });
      } catch (JdbiException e) {
        boolean ofTheDisk = BookFaults.ofTheDisk(e);
        // Of what was complete nobody knows whether it was kept, so that is not done again.
        boolean anew = openedAnew(used, e);
        boolean again = BookFaults.passing(e) || (anew && !complete.get() && !ofTheDisk);
        if (!again || tries >= MOST_TRIES) {
          throw BookFaults.notWritten(place, e);
        }
      }
    }
  }

  private <T> T written(Handle handle, String by, Function<BookWriting, T> writing) {
    return writing.apply(new BookWriting(handle, by, clock.instant()));
  }

  /** Closes it; whoever still reads or writes is told that it is gone. */
  @Override
  public void close() {
    pool.close();
  }
}
