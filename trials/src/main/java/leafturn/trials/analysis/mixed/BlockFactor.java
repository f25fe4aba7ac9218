package leafturn.trials.analysis.mixed;

import leafturn.trials.analysis.mixed.CovarianceStructure.Slopes;

/**
 * The covariance V of the observations of one block at one point, relative to the residual
 * variance, in a form in which it can be solved.
 */
abstract class BlockFactor {
  /** log |V|. */
  abstract double logDeterminant();

  /**
   * V⁻¹ times several vectors.
   *
   * @param x {@code [row * columns + column]}
   */
  abstract double[] solve(double[] x, int columns);

  /**
   * Adds the slopes of the trace of V⁻¹ times V.
   *
   * @param weight what the slopes are multiplied with
   */
  abstract void addTraces(Slopes slopes, double weight);

  /** The diagonal of V⁻¹. */
  abstract double[] diagonal();

  /**
   * How V⁻¹ moves with each covariance parameter.
   *
   * @param weighted V⁻¹Q
   * @param directions columns of Q
   */
  abstract Moves moves(double[] weighted, int directions);

  /**
   * Products of V⁻¹ with the derivatives V_i of V by each element of the covariances of random
   * effects and each parameter of the correlation over time.
   *
   * @param first Q'V⁻¹V_iV⁻¹Q
   * @param second Q'V⁻¹V_iV⁻¹V_jV⁻¹Q for j up to i
   * @param single tr(V⁻¹V_i)
   * @param traces tr(V⁻¹V_iV⁻¹V_j)
   */
  record Moves(double[][][] first, double[][][][] second, double[] single, double[][] traces) {
    static Moves none(int parameters, int directions) {
      double[][][][] second = new double[parameters][][][];
      for (int i = 0; i < parameters; i++) {
        second[i] = new double[i + 1][directions][directions];
      }
      return new Moves(
          new double[parameters][directions][directions],
          second,
          new double[parameters],
          new double[parameters][parameters]);
    }

    /**
     * Adds A'B.
     *
     * @param a {@code [row * directions + direction]}
     */
    static void addCross(double[][] sum, double[] a, double[] b) {
      int directions = sum.length;
      for (int at = 0; at < a.length; at += directions) {
        for (int j = 0; j < directions; j++) {
          double factor = a[at + j];
          if (factor != 0) {
            for (int k = 0; k < directions; k++) {
              sum[j][k] += factor * b[at + k];
            }
          }
        }
      }
    }
  }
}
