package leafturn.model;

import java.util.function.DoubleUnaryOperator;

/** Finds where a function crosses zero, for checks that publish the crossing. */
public final class Bisection {
  private Bisection() {}

  /** The zero between two points of opposite sign, to 1e-12 of their distance. */
  public static double zero(DoubleUnaryOperator function, double from, double to) {
    double atFrom = function.applyAsDouble(from);
    if (!(atFrom * function.applyAsDouble(to) < 0)) {
      throw new IllegalArgumentException("no change of sign between " + from + " and " + to);
    }
    double low = from;
    double high = to;
    while (Math.abs(high - low) > 1e-12 * Math.abs(to - from)) {
      double middle = (low + high) / 2;
      if (function.applyAsDouble(middle) * atFrom > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
