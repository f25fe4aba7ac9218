package leafturn.trials.analysis.multiplicity;

import org.jspecify.annotations.Nullable;

/** Whether correlations are products of one number for each variable. */
final class Loadings {
  private static final double SAME = 1e-9;

  private Loadings() {}

  /** The loadings, or null if there are none between -1 and 1. */
  static double @Nullable [] of(double[][] correlation) {
    int size = correlation.length;
    if (size == 1) {
      return new double[] {0};
    }
    if (size == 2) {
      double root = Math.sqrt(Math.abs(correlation[0][1]));
      return new double[] {root, Math.copySign(root, correlation[0][1])};
    }
    double[] loadings = new double[size];
    for (int i = 0; i < size; i++) {
      int j = (i + 1) % size;
      int k = (i + 2) % size;
      double square = correlation[i][j] * correlation[i][k] / correlation[j][k];
      if (!(square >= 0 && square <= 1 + SAME)) {
        return null;
      }
      loadings[i] = Math.min(1, Math.sqrt(square)) * (i == 0 ? 1 : Math.signum(correlation[0][i]));
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < i; j++) {
        if (Math.abs(correlation[i][j] - loadings[i] * loadings[j]) > SAME) {
          return null;
        }
      }
    }
    return loadings;
  }
}
