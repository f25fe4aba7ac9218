package leafturn.trials.analysis.numeric;

/** The inverse of very small matrices, of a few random effects, in place. */
public final class SmallInverse {
  private SmallInverse() {}

  /**
   * Replaces a matrix by its inverse, by Gauss-Jordan elimination with row pivots.
   *
   * @param a square, row by row
   * @return the determinant; 0 where there is no inverse
   * @source golub2013, section 3.4
   */
  public static double invert(double[] a, int order) {
    if (order == 1) {
      double only = a[0];
      a[0] = 1 / only;
      return only;
    }
    double[] inverse = new double[order * order];
    for (int i = 0; i < order; i++) {
      inverse[i * order + i] = 1;
    }
    double determinant = 1;
    for (int k = 0; k < order; k++) {
      int pivot = pivot(a, order, k);
      if (pivot != k) {
        swap(a, order, k, pivot);
        swap(inverse, order, k, pivot);
        determinant = -determinant;
      }
      double diagonal = a[k * order + k];
      determinant *= diagonal;
      if (diagonal == 0) {
        return 0;
      }
      for (int j = 0; j < order; j++) {
        a[k * order + j] /= diagonal;
        inverse[k * order + j] /= diagonal;
      }
      clear(a, inverse, order, k);
    }
    System.arraycopy(inverse, 0, a, 0, a.length);
    return determinant;
  }

  private static void clear(double[] a, double[] inverse, int order, int k) {
    for (int i = 0; i < order; i++) {
      double weight = a[i * order + k];
      if (i != k && weight != 0) {
        for (int j = 0; j < order; j++) {
          a[i * order + j] -= weight * a[k * order + j];
          inverse[i * order + j] -= weight * inverse[k * order + j];
        }
      }
    }
  }

  private static int pivot(double[] a, int order, int column) {
    int best = column;
    for (int i = column + 1; i < order; i++) {
      if (Math.abs(a[i * order + column]) > Math.abs(a[best * order + column])) {
        best = i;
      }
    }
    return best;
  }

  private static void swap(double[] a, int order, int one, int other) {
    for (int j = 0; one != other && j < order; j++) {
      double kept = a[one * order + j];
      a[one * order + j] = a[other * order + j];
      a[other * order + j] = kept;
    }
  }
}
