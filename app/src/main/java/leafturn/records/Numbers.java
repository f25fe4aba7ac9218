package leafturn.records;

import leafturn.quantity.DisplayNumber;

/** Numbers as people write them. */
public final class Numbers {
  private static final double LONG_NUMBER = 1e15;

  private Numbers() {}

  /** A number without needless zeros: 76 for 76.0, 3.675; with an exponent where it is huge. */
  public static String plain(double value) {
    return Math.abs(value) < LONG_NUMBER ? DisplayNumber.plain(value) : Double.toString(value);
  }

  /** A range for a message: "from 0 to 1"; "equal to 2" where it is a single number. */
  public static String range(double low, double high) {
    if (low == high) {
      return "equal to " + plain(low);
    }
    return "from " + plain(low) + " to " + plain(high);
  }

  /** A unit after a comma, or nothing where there is none. */
  static String comma(String unit) {
    return unit.isEmpty() ? "" : ", " + unit;
  }
}
