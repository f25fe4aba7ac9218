package leafturn.records.book;

/** The book cannot be read or written now; the message says why and what to do. */
public final class BookUnavailableException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BookUnavailableException(String message, Throwable cause) {
    super(message, cause);
  }
}
