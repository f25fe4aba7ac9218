package leafturn.trials.analysis.multiplicity;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a falling probability reaches a value. */
final class Crossing {
  private static final int MOST_EVALUATIONS = 200;

  private Crossing() {}

  static double of(DoubleUnaryOperator above, double fraction) {
    double high = 4;
    while (above.applyAsDouble(high) > fraction && high < 1e8) {
      high *= 2;
    }
    return new BracketingNthOrderBrentSolver(1e-12, 1e-11, 5)
        .solve(MOST_EVALUATIONS, x -> above.applyAsDouble(x) - fraction, 0, high);
  }
}
