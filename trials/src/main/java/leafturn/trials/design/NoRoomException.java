package leafturn.trials.design;

/** A lawn that a plan does not fit on: what does not fit, where, and what would. */
public final class NoRoomException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /**
   * @param sentence without the name of the lawn
   */
  public NoRoomException(String sentence) {
    super(sentence);
  }

  /** The same with the name of the lawn put before it. */
  public NoRoomException on(String lawn) {
    return new NoRoomException(lawn + ": " + getMessage());
  }

  /** The same with a further sentence after it. */
  public NoRoomException more(String sentence) {
    return new NoRoomException(getMessage() + " " + sentence);
  }
}
