package leafturn.records.book;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Objects;
import org.jdbi.v3.core.ConnectionFactory;
import org.jspecify.annotations.Nullable;

/**
 * The connections to a book. The database in a folder closes its file for good when the disk does
 * not take what it writes, however much room there is later; then its connections are closed and
 * the file is opened anew.
 */
final class BookPool implements ConnectionFactory, AutoCloseable {
  static final int MOST_CONNECTIONS = 8;
  private static final long CONNECT_MS = 4000;

  private final BookPlace place;
  private final String url;
  private volatile HikariDataSource source;
  private volatile @Nullable Object file;
  private boolean closed;

  /**
   * Opens the database, beginning an empty one where there is none.
   *
   * @throws RuntimeException when it cannot be opened
   */
  BookPool(BookPlace place, String url) {
    this.place = place;
    this.url = url;
    this.source = opened();
    this.file = place.file();
  }

  /**
   * True when the file of a folder's book is no longer where it was opened, or another one is, so
   * that what is written would be lost with it.
   */
  boolean gone() {
    return !Objects.equals(file, place.file());
  }

  private HikariDataSource opened() {
    HikariConfig pool = new HikariConfig();
    pool.setJdbcUrl(url);
    if (place.folder() != null) {
      pool.setUsername("leafturn");
      pool.setPassword("");
    }
    pool.setMaximumPoolSize(MOST_CONNECTIONS);
    pool.setMinimumIdle(1);
    pool.setConnectionTimeout(CONNECT_MS);
    pool.setPoolName("book");
    return new HikariDataSource(pool);
  }

  /**
   * Opened once the database that was closed is gone. As long as somebody is within a transaction
   * of it, the first who asks joins it, is refused, and so makes it go.
   */
  private HikariDataSource openedAfterTheOld() {
    for (int tries = 1; ; tries++) {
      try {
        return opened();
      } catch (RuntimeException e) {
        if (!BookFaults.storeClosed(e) || tries == MOST_CONNECTIONS) {
          throw e;
        }
      }
    }
  }

  /** The connections as they are now; others once the file was opened anew. */
  HikariDataSource source() {
    return source;
  }

  @Override
  public Connection openConnection() throws SQLException {
    return source.getConnection();
  }

  /** Closes a connection at once, which rolls back what it began; the pool has others. */
  void end(Connection pooled) throws SQLException {
    HikariDataSource from = source;
    try {
      pooled.unwrap(Connection.class).close();
    } finally {
      from.evictConnection(pooled);
    }
  }

  /**
   * Opens the file anew after the database closed it.
   *
   * @param broken the connections that were found to be of no use; when others are there by now,
   *     nothing is done
   * @return false when the book itself was closed
   * @throws RuntimeException when it cannot be opened; another call tries again
   */
  synchronized boolean openAnew(HikariDataSource broken) {
    if (closed) {
      return false;
    }
    if (source == broken) {
      broken.close();
      source = openedAfterTheOld();
      file = place.file();
    }
    return true;
  }

  @Override
  public synchronized void close() {
    closed = true;
    source.close();
  }
}
