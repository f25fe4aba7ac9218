package leafturn.records.book;

import java.io.IOException;
import java.net.ConnectException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import leafturn.records.book.BookUnavailableException.Reason;
import org.jspecify.annotations.Nullable;

/** Tells from what the database says what a person should know. */
final class BookFaults {
  private static final int H2_GENERAL = 50000;
  private static final int H2_OPEN_ELSEWHERE = 90020;
  private static final int H2_CLOSED = 90098;

  /** General error, file damaged, file of another version. */
  private static final Set<Integer> H2_DAMAGED = Set.of(50000, 90030, 90048);

  /** PostgreSQL's code. */
  private static final String DISK_FULL = "53100";

  private static final Set<Integer> H2_DISK = Set.of(90028, 90031);

  /** Serialisation failure, deadlock, lock not got in time, and a key that came into being. */
  private static final Set<String> PASSING = Set.of("40001", "40P01", "HYT00", "23505", "55P03");

  private BookFaults() {}

  static BookUnavailableException notOpened(BookPlace place, Throwable cause) {
    SQLException sql = sqlOf(cause);
    String said = firstLine(sql == null ? cause : sql);
    if (sql != null && sql.getErrorCode() == H2_OPEN_ELSEWHERE) {
      return fault(
          Reason.HELD,
          place,
          "it is open in another process; stop that one, or ask the running server through its"
              + " pages",
          cause);
    }
    Path folder = place.folder();
    if (folder != null && sql != null && H2_DISK.contains(sql.getErrorCode())) {
      return fault(
          Reason.DAMAGED,
          place,
          "its file cannot be read or written; check the disk, its free space and who may read the"
              + " file. If it is damaged, "
              + remedy(place),
          cause);
    }
    if (folder != null) {
      return fault(
          Reason.DAMAGED,
          place,
          "its file is damaged, or another version of Leafturn made it; " + remedy(place),
          cause);
    }
    if (sql == null) {
      return fault(
          Reason.DAMAGED, place, "its tables are not those of this Leafturn: " + said, cause);
    }
    return fault(Reason.AWAY, place, "the database server does not let us in: " + said, cause);
  }

  private static BookUnavailableException fault(
      Reason reason, BookPlace place, String why, Throwable cause) {
    return new BookUnavailableException(
        reason, "The book %s: %s.".formatted(place.shown(), why), cause);
  }

  /** What to do when the file of a folder's book is lost. */
  private static String remedy(BookPlace place) {
    return place
        .shelf()
        .flatMap(ArchiveShelf::newest)
        .map(
            kept ->
                "import the newest archive into a new book: leafturn book import --book NEW-FOLDER "
                    + kept.file())
        .orElse(
            "there is no archive in its folder, so import a backup into a new book with 'leafturn"
                + " book import'");
  }

  static BookUnavailableException notRead(BookPlace place, Exception cause) {
    if (reason(place, cause) == Reason.DAMAGED) {
      return fault(Reason.DAMAGED, place, "its file is damaged; " + remedy(place), cause);
    }
    return new BookUnavailableException(
        reason(place, cause),
        "The book %s cannot be read now: %s. Nothing was changed; %s."
            .formatted(place.shown(), why(cause), then(cause)),
        cause);
  }

  static BookUnavailableException notWritten(BookPlace place, Exception cause) {
    return new BookUnavailableException(
        reason(place, cause),
        "The book %s cannot be written now: %s. Nothing of this was saved; %s."
            .formatted(place.shown(), why(cause), then(cause)),
        cause);
  }

  /** What is written to a file that was deleted or moved away is lost when it is closed. */
  static BookUnavailableException gone(BookPlace place) {
    String file = String.valueOf(place.folder());
    String what =
        place.begun()
            ? "another file lies in %s, where its own was opened: somebody replaced it."
            : "its file is no longer in %s, where it was opened: somebody deleted or moved it.";
    String next =
        place.begun()
            ? " Nothing of this was saved. Stop the server, see that the file that is to count lies"
                + " there, and start again. If it is lost, "
            : " Nothing of this was saved. Stop the server, put the folder back or name its new"
                + " place with --book, and start again. If it is lost, ";
    return fault(
        place.begun() ? Reason.REPLACED : Reason.GONE,
        place,
        what.formatted(file) + next + remedy(place),
        new IOException("no file in " + file));
  }

  static BookUnavailableException noRoom(BookPlace place) {
    IOException full = new IOException("less room than a write may need");
    return notWritten(place, new SQLException("the disk is full", DISK_FULL, full));
  }

  /** True when doing the same again may well succeed. */
  static boolean passing(Exception cause) {
    SQLException sql = sqlOf(cause);
    return sql != null && sql.getSQLState() != null && PASSING.contains(sql.getSQLState());
  }

  /** True when a connection that was open broke; another one may be whole. */
  static boolean connectionLost(Exception cause) {
    SQLException sql = sqlOf(cause);
    String state = sql == null || sql.getSQLState() == null ? "" : sql.getSQLState();
    boolean broken = state.startsWith("08") || state.startsWith("57P");
    return broken && !neverOpened(cause);
  }

  /** True when no connection could be opened at all, so that trying again at once is no use. */
  private static boolean neverOpened(Throwable cause) {
    for (Throwable at = cause; at != null; at = at.getCause()) {
      if (at instanceof SQLTransientConnectionException || at instanceof ConnectException) {
        return true;
      }
    }
    return false;
  }

  /** True when the database in a folder has closed its file, so that only opening it anew helps. */
  static boolean storeClosed(Exception cause) {
    SQLException sql = sqlOf(cause);
    return sql != null && sql.getErrorCode() == H2_CLOSED;
  }

  /** The disk may still be full when a file that was closed for that is opened anew. */
  static BookUnavailableException notOpenedAnew(BookPlace place, RuntimeException cause) {
    if (ofTheDisk(cause)) {
      return fault(Reason.DISK, place, why(cause) + "; " + then(cause), cause);
    }
    return notOpened(place, cause);
  }

  private static Reason reason(BookPlace place, Exception cause) {
    SQLException sql = sqlOf(cause);
    if (ofTheDisk(sql)) {
      return Reason.DISK;
    }
    boolean damaged =
        place.folder() != null && sql != null && H2_DAMAGED.contains(sql.getErrorCode());
    return damaged ? Reason.DAMAGED : Reason.AWAY;
  }

  private static String then(Exception cause) {
    return ofTheDisk(cause) ? "make room on it and try again" : "try again in a while";
  }

  private static String why(Exception cause) {
    SQLException sql = sqlOf(cause);
    if (sql == null) {
      return "the database does not answer";
    }
    String state = sql.getSQLState() == null ? "" : sql.getSQLState();
    if (ofTheDisk(sql)) {
      return "the disk is full or does not take what is written";
    }
    if (H2_DAMAGED.contains(sql.getErrorCode())) {
      return "its file is damaged";
    }
    if (state.startsWith("08") || state.startsWith("57") || sql.getErrorCode() == H2_CLOSED) {
      return "the database does not answer";
    }
    return firstLine(sql);
  }

  /**
   * True when the disk did not take what was to be written, after which H2 is not to be trusted.
   */
  static boolean ofTheDisk(Exception cause) {
    return ofTheDisk(sqlOf(cause));
  }

  private static boolean ofTheDisk(@Nullable SQLException sql) {
    return sql != null
        && (DISK_FULL.equals(sql.getSQLState())
            || H2_DISK.contains(sql.getErrorCode())
            || ofAFile(sql));
  }

  /** True when the database tells of a general error that came of a file. */
  private static boolean ofAFile(@Nullable SQLException sql) {
    return sql != null
        && sql.getErrorCode() == H2_GENERAL
        && Stream.<Throwable>iterate(sql, Objects::nonNull, Throwable::getCause)
            .anyMatch(IOException.class::isInstance);
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
