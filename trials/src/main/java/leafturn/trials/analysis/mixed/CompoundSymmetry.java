package leafturn.trials.analysis.mixed;

/** The same correlation between any two times, between -1/(times-1) and 1. */
final class CompoundSymmetry extends TimeCorrelation {
  private final int times;
  private final double lowest;

  CompoundSymmetry(int times) {
    this.times = times;
    this.lowest = -1.0 / Math.max(1, times - 1);
  }

  @Override
  int parameters() {
    return 1;
  }

  @Override
  double[][] starts() {
    return new double[][] {{0}};
  }

  @Override
  double[][] covariance(double[] free) {
    double[][] matrix = filled(times, rho(free));
    for (int i = 0; i < times; i++) {
      matrix[i][i] = 1;
    }
    return matrix;
  }

  @Override
  double[][][] derivatives(double[] free) {
    double share = share(free);
    double[][] matrix = filled(times, (1 - lowest) * share * (1 - share));
    for (int i = 0; i < times; i++) {
      matrix[i][i] = 0;
    }
    return new double[][][] {matrix};
  }

  @Override
  Double rho(double[] free) {
    return lowest + (1 - lowest) * share(free);
  }

  private static double share(double[] free) {
    return 1 / (1 + Math.exp(-free[0]));
  }
}
