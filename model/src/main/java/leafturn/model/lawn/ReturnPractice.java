package leafturn.model.lawn;

/**
 * What becomes of a programme's clippings.
 *
 * @param share share returned to the turf, 0 to 1; by the rules, what counts where nobody looks at
 *     the lawn
 * @param byRules true when each mowing is decided by the state of the lawn on its day
 */
public record ReturnPractice(double share, boolean byRules) {
  public ReturnPractice {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException(
          "mowing.clippings.returnedShare is " + share + ", but must lie from 0 to 1");
    }
  }

  /** The same share at every mowing, 0 to 1. */
  public static ReturnPractice always(double share) {
    return new ReturnPractice(share, false);
  }

  /** Decided at each mowing. */
  public static ReturnPractice byTheRules() {
    return new ReturnPractice(1, true);
  }
}
