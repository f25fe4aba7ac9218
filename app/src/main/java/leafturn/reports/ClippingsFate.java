package leafturn.reports;

/** What became of the clippings of a mowing. */
public enum ClippingsFate {
  RETURNED,
  PARTLY_RETURNED,
  COLLECTED;

  private static final double ALL = 0.995;
  private static final double NONE = 0.005;

  /**
   * @param returnedFraction share of the clippings returned, 0-1
   */
  public static ClippingsFate of(double returnedFraction) {
    if (returnedFraction >= ALL) {
      return RETURNED;
    }
    return returnedFraction <= NONE ? COLLECTED : PARTLY_RETURNED;
  }

  /** In words: "returned", "collected", or how much was returned. */
  public static String words(double returnedFraction) {
    return switch (of(returnedFraction)) {
      case RETURNED -> "returned";
      case COLLECTED -> "collected";
      case PARTLY_RETURNED -> QuantityWords.percent(returnedFraction) + " returned";
    };
  }
}
