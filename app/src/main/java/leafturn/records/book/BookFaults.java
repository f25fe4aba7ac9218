package leafturn.records.book;

import java.sql.SQLException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Tells from what the database says what a person should know. */
final class BookFaults {
  private static final int H2_OPEN_ELSEWHERE = 90020;
  private static final int H2_FILE_OF_ANOTHER_VERSION = 90048;
  private static final int H2_DISK = 90031;

  /** Serialisation failure, deadlock, lock not got in time, and a key that came into being. */
  private static final Set<String> PASSING = Set.of("40001", "40P01", "HYT00", "23505", "55P03");

  private BookFaults() {}

  static BookUnavailableException notOpened(BookPlace place, Exception cause) {
    SQLException sql = sqlOf(cause);
    String why = "it cannot be opened: " + firstLine(sql == null ? cause : sql);
    if (sql != null && sql.getErrorCode() == H2_OPEN_ELSEWHERE) {
      why =
          "it is open in another process; stop that one, or ask the running server through its pages";
    } else if (sql != null && sql.getErrorCode() == H2_FILE_OF_ANOTHER_VERSION) {
      why =
          "its file was made by another version of the database or is damaged; import the newest"
              + " archive of the folder into a new book with 'leafturn book import'";
    } else if (place.folder() == null) {
      why = "the database server does not let us in: " + firstLine(sql == null ? cause : sql);
    }
    return new BookUnavailableException("The book %s: %s.".formatted(place.shown(), why), cause);
  }

  static BookUnavailableException notRead(BookPlace place, Exception cause) {
    return new BookUnavailableException(
        "The book %s cannot be read now: %s. Nothing was changed; try again in a while."
            .formatted(place.shown(), why(cause)),
        cause);
  }

  static BookUnavailableException notWritten(BookPlace place, Exception cause) {
    return new BookUnavailableException(
        "The book %s cannot be written now: %s. Nothing of this was saved; try again in a while."
            .formatted(place.shown(), why(cause)),
        cause);
  }

  /** True when doing the same again may well succeed. */
  static boolean passing(Exception cause) {
    SQLException sql = sqlOf(cause);
    return sql != null && sql.getSQLState() != null && PASSING.contains(sql.getSQLState());
  }

  private static String why(Exception cause) {
    SQLException sql = sqlOf(cause);
    if (sql == null) {
      return "the database does not answer";
    }
    String state = sql.getSQLState() == null ? "" : sql.getSQLState();
    if (state.equals("53100") || sql.getErrorCode() == H2_DISK) {
      return "the disk is full or does not take what is written";
    }
    if (state.startsWith("08") || state.startsWith("57") || sql.getErrorCode() == 90098) {
      return "the database does not answer";
    }
    return firstLine(sql);
  }

  private static @Nullable SQLException sqlOf(Throwable cause) {
    SQLException found = null;
    for (Throwable at = cause; at != null; at = at.getCause()) {
      if (at instanceof SQLException sql) {
        found = sql;
      }
    }
    return found;
  }

  private static String firstLine(Throwable cause) {
    String message = cause.getMessage();
    return message == null
        ? cause.getClass().getSimpleName()
        : message.lines().findFirst().orElse("").replaceAll("[.;:] *$", "");
  }
}
