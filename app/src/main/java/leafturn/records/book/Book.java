package leafturn.records.book;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.InstantSource;
import java.util.function.Function;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/**
 * A book that lies open. Safe for use from several threads; a folder's book is held by one process
 * at a time, a server's by any number.
 */
public final class Book implements AutoCloseable {
  private static final String MIGRATIONS = "classpath:leafturn/records/book/migrations";
  private static final int MOST_CONNECTIONS = 8;
  private static final int MOST_TRIES = 4;
  private static final long CONNECT_MS = 4000;

  private final BookPlace place;
  private final HikariDataSource source;
  private final Jdbi jdbi;
  private final InstantSource clock;

  private Book(BookPlace place, HikariDataSource source, InstantSource clock) {
    this.place = place;
    this.source = source;
    this.jdbi = Jdbi.create(source);
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
    HikariConfig pool = new HikariConfig();
    pool.setJdbcUrl(place.url());
    if (place.folder() != null) {
      pool.setUsername("leafturn");
      pool.setPassword("");
    }
    pool.setMaximumPoolSize(MOST_CONNECTIONS);
    pool.setMinimumIdle(1);
    pool.setConnectionTimeout(CONNECT_MS);
    pool.setPoolName("book");
    HikariDataSource source = null;
    try {
      source = new HikariDataSource(pool);
      Flyway.configure().dataSource(source).locations(MIGRATIONS).load().migrate();
      return new Book(place, source, clock);
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
      // A damaged file makes the database throw whatever its bytes lead to.
      if (source != null) {
        source.close();
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
    for (int tries = 1; ; tries++) {
      try {
        return jdbi.inTransaction(handle -> reading.apply(new BookReading(handle)));
      } catch (JdbiException e) {
        if (tries > MOST_CONNECTIONS || !BookFaults.connectionLost(e)) {
          throw BookFaults.notRead(place, e);
        }
      }
    }
  }

  /**
   * Reads much from the book as it stands at one moment, whatever is written meanwhile.
   *
   * @throws BookUnavailableException when the database cannot be reached or is damaged
   */
  public <T> T snapshot(Function<BookReading, T> reading) {
    // What H2 calls serializable and PostgreSQL repeatable read are both the view of one moment.
    TransactionIsolationLevel level =
        place.folder() == null
            ? TransactionIsolationLevel.REPEATABLE_READ
            : TransactionIsolationLevel.SERIALIZABLE;
    try {
      return jdbi.inTransaction(level, handle -> reading.apply(new BookReading(handle)));
    } catch (JdbiException e) {
      throw BookFaults.notRead(place, e);
    }
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
    for (int tries = 1; ; tries++) {
      try {
        return jdbi.inTransaction(handle -> written(handle, by, writing));
      } catch (JdbiException e) {
        if (tries >= MOST_TRIES || !BookFaults.passing(e)) {
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
    source.close();
  }
}
