package leafturn.records.book;

import java.sql.Connection;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.transaction.DelegatingTransactionHandler;
import org.jdbi.v3.core.transaction.LocalTransactionHandler;
import org.jdbi.v3.core.transaction.TransactionException;
import org.jdbi.v3.core.transaction.TransactionHandler;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/**
 * Transactions of a folder's book, which end a connection instead of rolling back on it.
 *
 * <p>When the disk did not take a write, H2 2.4.240 closes its store under every transaction. A
 * ROLLBACK of one that changed nothing then counts itself out of the store twice, once as the
 * transaction ends and once as the statement does, and whatever statement comes next, such as the
 * one that turns autocommit on again, waits for that count for ever. Closing the connection rolls
 * back as well, but is no statement.
 */
final class FolderTransactions extends DelegatingTransactionHandler {
  private final BookPool pool;
  private boolean ended;

  FolderTransactions(BookPool pool) {
    this(pool, LocalTransactionHandler.binding());
  }

  private FolderTransactions(BookPool pool, TransactionHandler of) {
    super(of);
    this.pool = pool;
  }

  @Override
  public TransactionHandler specialize(Handle handle) throws SQLException {
    return new FolderTransactions(pool, getDelegate().specialize(handle));
  }

  @Override
  public void rollback(Handle handle) {
    ended = true;
    Connection connection = handle.getConnection();
    try {
      pool.end(connection);
    } catch (SQLException e) {
      throw new TransactionException("the connection could not be closed", e);
    }
  }

  @Override
  public boolean isInTransaction(Handle handle) {
    return !ended && super.isInTransaction(handle);
  }

  @Override
  public <R, X extends Exception> R inTransaction(
      Handle handle, TransactionIsolationLevel level, HandleCallback<R, X> callback) throws X {
    // The pool sets the level back when the connection is returned to it.
    handle.setTransactionIsolationLevel(level);
    return inTransaction(handle, callback);
  }
}
