package leafturn.trials.power;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Finds where a rising function crosses zero. */
final class Search {
  private static final int MOST_STEPS = 500;

  private Search() {}

  /**
   * The crossing between two ends; the lower end where the function is above zero there already,
   * infinite where it is still below zero at the upper end.
   *
   * @param low 0 or more
   */
  static double rising(DoubleUnaryOperator function, double low, double high) {
    double atLow = function.applyAsDouble(low);
    if (atLow >= 0) {
      return low;
    }
    double left = low;
    double reach = Math.max(1, low);
    double right = Math.min(high, low + reach);
    while (function.applyAsDouble(right) < 0) {
      if (right >= high) {
        return Double.POSITIVE_INFINITY;
      }
      left = right;
      reach *= 2;
      right = Math.min(high, low + reach);
    }
    if (function.applyAsDouble(right) == 0) {
      return right;
    }
    return new BracketingNthOrderBrentSolver(1e-13, 1e-13, 5)
        .solve(MOST_STEPS, function::applyAsDouble, left, right);
  }
}
