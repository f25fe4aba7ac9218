package leafturn.advice.season;

/** A plan that cannot be made: one sentence says what is wrong and what would be right. */
public final class NoPlanException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Where where;

  /** What has to be changed. */
  public enum Where {
    /** The record of weather. */
    WEATHER,
    /** The lawn's own programme. */
    LAWN,
    /** A programme that was given. */
    PROGRAMMES
  }

  NoPlanException(Where where, String message) {
    super(message);
    this.where = where;
  }

  /** What has to be changed. */
  public Where where() {
    return where;
  }

  /** The sentence with the name of the place before it, of those given in order. */
  public String about(String weather, String lawn, String programmes) {
    String place =
        switch (where) {
          case WEATHER -> weather;
          case LAWN -> lawn;
          case PROGRAMMES -> programmes;
        };
    return place + ": " + getMessage() + ".";
  }
}
