package leafturn.web;

/** The server could not listen where it was asked to; the message is a sentence for the user. */
public final class CannotListenException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CannotListenException(String message, Throwable cause) {
    super(message, cause);
  }
}
