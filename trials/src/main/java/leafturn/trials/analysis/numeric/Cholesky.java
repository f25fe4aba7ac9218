package leafturn.trials.analysis.numeric;

/**
 * Cholesky factors of symmetric matrices kept row by row in one array: the inner loop of the
 * likelihood, which a general library would make allocate at every step.
 */
public final class Cholesky {
  private Cholesky() {}

  /**
   * Replaces the lower triangle of a matrix by its factor L with A = L L'.
   *
   * @param a the matrix, {@code order} by {@code order}, row by row; its lower triangle is read
   * @param order rows of the matrix, 1 or more
   * @return whether the matrix was positive definite; if not, the contents are of no use
   * @source golub2013, algorithm 4.2.1
   */
  public static boolean factor(double[] a, int order) {
    for (int j = 0; j < order; j++) {
      int rowJ = j * order;
      double pivot = a[rowJ + j];
      double scale = Math.abs(pivot);
      for (int k = 0; k < j; k++) {
        pivot -= a[rowJ + k] * a[rowJ + k];
      }
      if (!(pivot > scale * 1e-15)) {
        return false;
      }
      double diagonal = Math.sqrt(pivot);
      a[rowJ + j] = diagonal;
      for (int i = j + 1; i < order; i++) {
        int rowI = i * order;
        double sum = a[rowI + j];
        for (int k = 0; k < j; k++) {
          sum -= a[rowI + k] * a[rowJ + k];
        }
        a[rowI + j] = sum / diagonal;
      }
    }
    return true;
  }

  /** log |A| from the factor of A. */
  public static double logDeterminant(double[] factor, int order) {
    double sum = 0;
    for (int i = 0; i < order; i++) {
      sum += Math.log(factor[i * order + i]);
    }
    return 2 * sum;
  }

  /**
   * The inverse of A from its factor.
   *
   * @return both triangles, row by row
   * @source golub2013, section 3.1
   */
  public static double[] inverse(double[] factor, int order) {
    double[] lower = inverseOfFactor(factor, order);
    double[] inverse = new double[order * order];
    for (int k = 0; k < order; k++) {
      int rowK = k * order;
      for (int i = 0; i <= k; i++) {
        double left = lower[rowK + i];
        int rowI = i * order;
        for (int j = 0; j <= i; j++) {
          inverse[rowI + j] += left * lower[rowK + j];
        }
      }
    }
    for (int i = 0; i < order; i++) {
      for (int j = 0; j < i; j++) {
        inverse[j * order + i] = inverse[i * order + j];
      }
    }
    return inverse;
  }

  /** The inverse of the factor L, its lower triangle row by row. */
  public static double[] inverseOfFactor(double[] factor, int order) {
    double[] inverse = new double[order * order];
    for (int i = 0; i < order; i++) {
      int rowI = i * order;
      double diagonal = factor[rowI + i];
      for (int k = 0; k < i; k++) {
        double weight = factor[rowI + k];
        if (weight != 0) {
          int rowK = k * order;
          for (int j = 0; j <= k; j++) {
            inverse[rowI + j] -= weight * inverse[rowK + j];
          }
        }
      }
      for (int j = 0; j < i; j++) {
        inverse[rowI + j] /= diagonal;
      }
      inverse[rowI + i] = 1 / diagonal;
    }
    return inverse;
  }
}
