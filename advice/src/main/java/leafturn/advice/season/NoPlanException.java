package leafturn.advice.season;

/** A plan that cannot be made: one sentence says what is wrong and what would be right. */
public final class NoPlanException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  NoPlanException(String message) {
    super(message);
  }
}
