package leafturn.trials.analysis.mixed;

/**
 * A correlation that falls as a power of the distance between two times: of positions (rho between
 * -1 and 1) or of the time between them (rho between 0 and 1).
 */
final class PowerCorrelation extends TimeCorrelation {
  private final double[] at;
  private final boolean wholeSteps;
  private final double closest;

  private PowerCorrelation(double[] at, boolean wholeSteps) {
    this.at = at;
    this.wholeSteps = wholeSteps;
    double gap = Double.POSITIVE_INFINITY;
    for (int i = 1; i < at.length; i++) {
      gap = Math.min(gap, at[i] - at[i - 1]);
    }
    this.closest = Double.isInfinite(gap) ? 1 : gap;
  }

  static PowerCorrelation ofPositions(int times) {
    double[] at = new double[times];
    for (int i = 0; i < times; i++) {
      at[i] = i;
    }
    return new PowerCorrelation(at, true);
  }

  static PowerCorrelation ofTimes(double[] at) {
    return new PowerCorrelation(at, false);
  }

  @Override
  int parameters() {
    return 1;
  }

  @Override
  double[][] starts() {
    return wholeSteps ? new double[][] {{0.1}, {0.9}} : new double[][] {{0}, {-2.5}};
  }

  @Override
  double[][] covariance(double[] free) {
    double[][] matrix = new double[at.length][at.length];
    for (int i = 0; i < at.length; i++) {
      for (int j = 0; j < at.length; j++) {
        matrix[i][j] = wholeSteps ? power(free, Math.abs(i - j)) : decay(free, i, j);
      }
    }
    return matrix;
  }

  @Override
  double[][][] derivatives(double[] free) {
    double[][] matrix = new double[at.length][at.length];
    double rho = Math.tanh(free[0]);
    for (int i = 0; i < at.length; i++) {
      for (int j = 0; j < at.length; j++) {
        int lag = Math.abs(i - j);
        if (wholeSteps) {
          matrix[i][j] = lag == 0 ? 0 : lag * power(free, lag - 1) * (1 - rho * rho);
        } else {
          matrix[i][j] = -rate(free) * Math.abs(at[i] - at[j]) * decay(free, i, j);
        }
      }
    }
    return new double[][][] {matrix};
  }

  @Override
  Double rho(double[] free) {
    return wholeSteps ? Math.tanh(free[0]) : Math.exp(-rate(free));
  }

  @Override
  boolean isAtLimit(double[] free) {
    double nearest = wholeSteps ? Math.abs(Math.tanh(free[0])) : Math.exp(-rate(free) * closest);
    return nearest > 1 - 1e-7 || (!wholeSteps && nearest < 1e-7);
  }

  private static double power(double[] free, int lag) {
    return Math.pow(Math.tanh(free[0]), lag);
  }

  private double decay(double[] free, int i, int j) {
    return Math.exp(-rate(free) * Math.abs(at[i] - at[j]));
  }

  /** The fall of the correlation's logarithm per unit of time. */
  private double rate(double[] free) {
    return Math.exp(free[0]) / closest;
  }
}
