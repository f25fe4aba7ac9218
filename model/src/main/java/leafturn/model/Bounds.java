package leafturn.model;

/**
 * Bounds of the daily step. They differ from {@link Math#min} and {@link Math#max} in how they are
 * computed alone: by a branch, which the processor foresees where a bound is seldom met, instead of
 * a longer sequence without one. A value that is not a number stays so.
 */
public final class Bounds {
  private Bounds() {}

  /** The value, or the bound where the value is lower. */
  public static double atLeast(double low, double value) {
    return value < low ? low : value;
  }

  /** The value, or the bound where the value is higher. */
  public static double atMost(double high, double value) {
    return value > high ? high : value;
  }

  /** The value held to 0 to 1. */
  public static double fraction(double value) {
    return atMost(1, atLeast(0, value));
  }
}
