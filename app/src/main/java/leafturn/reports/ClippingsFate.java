package leafturn.reports;

import leafturn.quantity.Units;

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

  /**
   * In words: "returned", "collected", or how much was returned; for some "clippings left",
   * "bagged".
   */
  public static String words(double returnedFraction, Units units) {
    return switch (of(returnedFraction)) {
      case RETURNED -> units.told("returned");
      case COLLECTED -> units.told("collected");
      case PARTLY_RETURNED -> units.told(QuantityWords.percent(returnedFraction) + " returned");
    };
  }
}
