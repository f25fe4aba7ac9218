package leafturn.trials.analysis.multiplicity;

import java.util.function.DoubleUnaryOperator;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.special.Erf;

/**
 * P(all normals within a bound of 0) for any correlation, one variable after the other, on a fixed
 * lattice; good to about 1e-4.
 *
 * @source genz1992, section 3
 */
final class NormalBox implements DoubleUnaryOperator {
  private static final int POINTS = 8191;
  private static final int[] PRIMES = {
    2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97,
    101, 103, 107, 109, 113
  };

  private final double[][] factor;

  NormalBox(double[][] correlation) {
    factor = factor(correlation);
  }

  @Override
  public double applyAsDouble(double bound) {
    int size = factor.length;
    double[] y = new double[size];
    double sum = 0;
    for (int point = 1; point <= POINTS; point++) {
      double product = 1;
      for (int i = 0; i < size && product > 0; i++) {
        double mean = 0;
        for (int j = 0; j < i; j++) {
          mean += factor[i][j] * y[j];
        }
        double low = Tails.normalBelow((-bound - mean) / factor[i][i]);
        double high = Tails.normalBelow((bound - mean) / factor[i][i]);
        product *= high - low;
        double root = point * Math.sqrt(PRIMES[i % PRIMES.length]);
        double at = Math.abs(2 * (root - Math.floor(root)) - 1);
        y[i] = quantile(low + at * (high - low));
      }
      sum += product;
    }
    return sum / POINTS;
  }

  private static double quantile(double fraction) {
    double inside = Math.max(1e-300, Math.min(1 - 1e-16, fraction));
    return -Math.sqrt(2) * Erf.erfcInv(2 * inside);
  }

  /** A triangular factor; a variable that depends on others gets a trace of its own spread. */
  private static double[][] factor(double[][] correlation) {
    int size = correlation.length;
    EigenDecompositionSymmetric eigen = Matrices.eigen(correlation);
    double lift = Math.max(0, 1e-8 - eigen.getEigenvalue(size - 1));
    double[][] factor = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = correlation[i][j] + (i == j ? lift : 0);
        for (int k = 0; k < j; k++) {
          sum -= factor[i][k] * factor[j][k];
        }
        factor[i][j] = i == j ? Math.sqrt(Math.max(sum, 1e-10)) : sum / factor[j][j];
      }
    }
    return factor;
  }
}
