package leafturn.advice.call;

/** The weather record does not allow a call for the day asked for; the message says what would. */
public final class NoCallException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  NoCallException(String message) {
    super(message);
  }
}
