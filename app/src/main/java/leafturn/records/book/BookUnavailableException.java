package leafturn.records.book;

/** The book cannot be read or written now; the message says why and what to do. */
public final class BookUnavailableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Reason reason;

  /** Why it is not to be had. */
  public enum Reason {
    /** Another process holds its file. */
    HELD,

    /** Its file or its tables are not what they should be. */
    DAMAGED,

    /** Its file is no longer where it was opened. */
    GONE,

    /** Another file lies where its own was opened. */
    REPLACED,

    /** The disk it lies on is full, or takes nothing for another cause. */
    DISK,

    /** The database does not answer, or not now. */
    AWAY
  }

  BookUnavailableException(Reason reason, String message, Throwable cause) {
    super(message, cause);
    this.reason = reason;
  }

  /** Why it is not to be had. */
  public Reason reason() {
    return reason;
  }
}
