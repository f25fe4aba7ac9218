package leafturn.trials.analysis.numeric;

import org.jspecify.annotations.Nullable;

/**
 * The factor U of a positive definite matrix A = U'U, for matrices too large for the processor's
 * cache: rows are worked on four at a time in loops over neighbouring elements, which the virtual
 * machine turns into vector instructions.
 *
 * @source golub2013, section 4.2.9
 */
public final class UpperFactor {
  /** Rows that are finished before all rows below them are brought up to date. */
  private static final int PANEL = 32;

  private static final int TOGETHER = 4;

  private final double[][] rows;

  private UpperFactor(double[][] rows) {
    this.rows = rows;
  }

  /**
   * Factors a matrix in place.
   *
   * @param a square; the upper triangle is read and overwritten
   * @return null if the matrix is not positive definite
   */
  public static @Nullable UpperFactor of(double[][] a) {
    double[] largest = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      largest[i] = Math.abs(a[i][i]);
    }
    UpperFactor factor = new UpperFactor(a);
    for (int first = 0; first < a.length; first += PANEL) {
      int end = Math.min(first + PANEL, a.length);
      if (!factor.finish(first, end, largest)) {
        return null;
      }
      for (int i = end; i < a.length; i++) {
        factor.reduce(i, first, end);
      }
    }
    return factor;
  }

  private boolean finish(int first, int end, double[] largest) {
    for (int k = first; k < end; k++) {
      reduce(k, first, k);
      double pivot = rows[k][k];
      if (!(pivot > 1e-15 * largest[k])) {
        return false;
      }
      double diagonal = Math.sqrt(pivot);
      for (int j = k; j < rows.length; j++) {
        rows[k][j] /= diagonal;
      }
    }
    return true;
  }

  /** Takes the share of finished rows off a row. */
  private void reduce(int row, int first, int end) {
    double[] weights = new double[TOGETHER];
    for (int k = first; k < end; k += TOGETHER) {
      double[][] four = four(rows, k, end);
      for (int l = 0; l < TOGETHER; l++) {
        weights[l] = k + l < end ? -rows[k + l][row] : 0;
      }
      add(rows[row], four, weights, row, rows.length);
    }
  }

  /** Four rows from one on; those past the end repeat the first and are given no weight. */
  private static double[][] four(double[][] of, int k, int end) {
    return new double[][] {
      of[k], of[k + 1 < end ? k + 1 : k], of[k + 2 < end ? k + 2 : k], of[k + 3 < end ? k + 3 : k]
    };
  }

  private static void add(double[] sum, double[][] four, double[] weights, int from, int to) {
    double[] a = four[0];
    double[] b = four[1];
    double[] c = four[2];
    double[] d = four[3];
    double weightA = weights[0];
    double weightB = weights[1];
    double weightC = weights[2];
    double weightD = weights[3];
    for (int j = from; j < to; j++) {
      sum[j] += weightA * a[j] + weightB * b[j] + weightC * c[j] + weightD * d[j];
    }
  }

  /** log |A|. */
  public double logDeterminant() {
    double sum = 0;
    for (int k = 0; k < rows.length; k++) {
      sum += Math.log(rows[k][k]);
    }
    return 2 * sum;
  }

  /**
   * Replaces several right-hand sides by their solutions.
   *
   * @param x {@code [row * columns + column]}
   */
  public void solve(double[] x, int columns) {
    for (int k = 0; k < rows.length; k++) {
      divide(x, k, columns);
      for (int i = k + 1; i < rows.length; i++) {
        take(x, i, rows[k][i], k, columns);
      }
    }
    for (int k = rows.length - 1; k >= 0; k--) {
      for (int i = k + 1; i < rows.length; i++) {
        take(x, k, rows[k][i], i, columns);
      }
      divide(x, k, columns);
    }
  }

  private void divide(double[] x, int row, int columns) {
    double diagonal = rows[row][row];
    for (int j = 0; j < columns; j++) {
      x[row * columns + j] /= diagonal;
    }
  }

  private static void take(double[] x, int to, double weight, int from, int columns) {
    if (weight != 0) {
      for (int j = 0; j < columns; j++) {
        x[to * columns + j] -= weight * x[from * columns + j];
      }
    }
  }

  /**
   * The inverse of A.
   *
   * @return its lower triangle, {@code [row][column up to row]}
   */
  public double[][] inverse() {
    double[][] lower = inverseOfTranspose();
    int order = rows.length;
    double[][] inverse = new double[order][];
    for (int i = 0; i < order; i++) {
      inverse[i] = new double[i + 1];
    }
    double[] weights = new double[TOGETHER];
    for (int first = 0; first < order; first += PANEL) {
      int end = Math.min(first + PANEL, order);
      for (int i = 0; i < end; i++) {
        for (int k = Math.max(first, i); k < end; k += TOGETHER) {
          double[][] four = four(lower, k, end);
          for (int l = 0; l < TOGETHER; l++) {
            weights[l] = k + l < end ? lower[k + l][i] : 0;
          }
          add(inverse[i], four, weights, 0, i + 1);
        }
      }
    }
    return inverse;
  }

  /** The inverse of U', its lower triangle. */
  private double[][] inverseOfTranspose() {
    int order = rows.length;
    double[][] lower = new double[order][];
    for (int i = 0; i < order; i++) {
      lower[i] = new double[i + 1];
      lower[i][i] = 1;
    }
    for (int first = 0; first < order; first += PANEL) {
      int end = Math.min(first + PANEL, order);
      for (int k = 0; k < first; k += TOGETHER) {
        for (int i = first; i < end; i++) {
          takeFour(lower, i, k);
        }
      }
      for (int i = first; i < end; i++) {
        for (int k = first; k < i; k++) {
          takeOne(lower[i], lower[k], rows[k][i]);
        }
        for (int j = 0; j <= i; j++) {
          lower[i][j] /= rows[i][i];
        }
      }
    }
    return lower;
  }

  /** Panels are whole fours, so that all four rows are finished. */
  private void takeFour(double[][] lower, int i, int k) {
    double[] weights = {-rows[k][i], -rows[k + 1][i], -rows[k + 2][i], -rows[k + 3][i]};
    double[][] four = {lower[k], lower[k + 1], lower[k + 2], lower[k + 3]};
    add(lower[i], four, weights, 0, k + 1);
    for (int l = 1; l < TOGETHER; l++) {
      for (int j = k + 1; j <= k + l; j++) {
        lower[i][j] += weights[l] * four[l][j];
      }
    }
  }

  private static void takeOne(double[] from, double[] row, double weight) {
    for (int j = 0; j < row.length; j++) {
      from[j] -= weight * row[j];
    }
  }
}
