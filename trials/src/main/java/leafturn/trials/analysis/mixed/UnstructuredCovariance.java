package leafturn.trials.analysis.mixed;

import java.util.Arrays;

/**
 * A free covariance between any two times, as the product of a triangular matrix with itself whose
 * first element is 1.
 *
 * @source pinheiro1996, section 2.1
 */
final class UnstructuredCovariance extends TimeCorrelation {
  /** A time of which the others leave less than this share of its sd is told by them. */
  private static final double NEARLY_NOTHING = 1e-4;

  private final int times;

  UnstructuredCovariance(int times) {
    this.times = times;
  }

  @Override
  int parameters() {
    return times * (times + 1) / 2 - 1;
  }

  @Override
  double[][] starts() {
    double[] start = new double[parameters()];
    for (int i = 1; i < times; i++) {
      start[index(i, i)] = 1;
    }
    return new double[][] {start};
  }

  @Override
  double[][] covariance(double[] free) {
    double[][] factor = factor(free);
    double[][] matrix = new double[times][times];
    for (int i = 0; i < times; i++) {
      for (int j = 0; j < times; j++) {
        for (int k = 0; k <= Math.min(i, j); k++) {
          matrix[i][j] += factor[i][k] * factor[j][k];
        }
      }
    }
    return matrix;
  }

  @Override
  double[][][] derivatives(double[] free) {
    double[][] factor = factor(free);
    double[][][] derivatives = new double[parameters()][times][times];
    for (int a = 1; a < times; a++) {
      for (int b = 0; b <= a; b++) {
        double[][] derivative = derivatives[index(a, b)];
        for (int j = b; j < times; j++) {
          derivative[a][j] += factor[j][b];
          derivative[j][a] += factor[j][b];
        }
      }
    }
    return derivatives;
  }

  @Override
  double[] sdRatios(double[] free) {
    double[][] matrix = covariance(free);
    double[] ratios = new double[times];
    for (int i = 0; i < times; i++) {
      ratios[i] = Math.sqrt(matrix[i][i]);
    }
    return ratios;
  }

  @Override
  boolean isAtLimit(double[] free) {
    double[] sds = sdRatios(free);
    double largest = Arrays.stream(sds).max().orElse(0);
    for (int i = 1; i < times; i++) {
      boolean varies = sds[i] > 1e-5 * largest;
      if (varies && Math.abs(free[index(i, i)]) < NEARLY_NOTHING * sds[i]) {
        return true;
      }
    }
    return false;
  }

  private static int index(int row, int column) {
    return row * (row + 1) / 2 + column - 1;
  }

  private double[][] factor(double[] free) {
    double[][] factor = new double[times][times];
    factor[0][0] = 1;
    for (int i = 1; i < times; i++) {
      for (int j = 0; j <= i; j++) {
        factor[i][j] = free[index(i, j)];
      }
    }
    return factor;
  }
}
