package leafturn.trials.analysis.mixed;

/** A correlation that falls as a power of the difference of positions, with a variance for each. */
final class HeterogeneousCorrelation extends TimeCorrelation {
  private final int times;
  private final PowerCorrelation power;

  HeterogeneousCorrelation(int times) {
    this.times = times;
    this.power = PowerCorrelation.ofPositions(times);
  }

  @Override
  int parameters() {
    return times;
  }

  @Override
  double[][] starts() {
    double[][] starts = new double[2][times];
    starts[0][0] = 0.1;
    starts[1][0] = 0.9;
    return starts;
  }

  @Override
  double[][] covariance(double[] free) {
    return scaled(power.covariance(free), sdRatios(free));
  }

  @Override
  double[][][] derivatives(double[] free) {
    double[] ratios = sdRatios(free);
    double[][][] derivatives = new double[times][][];
    derivatives[0] = scaled(power.derivatives(free)[0], ratios);
    double[][] covariance = covariance(free);
    for (int k = 1; k < times; k++) {
      double[][] derivative = new double[times][times];
      for (int i = 0; i < times; i++) {
        derivative[i][k] += covariance[i][k];
        derivative[k][i] += covariance[k][i];
      }
      derivatives[k] = derivative;
    }
    return derivatives;
  }

  @Override
  int spreads() {
    return times;
  }

  @Override
  Double rho(double[] free) {
    return power.rho(free);
  }

  @Override
  double[] sdRatios(double[] free) {
    double[] ratios = new double[times];
    ratios[0] = 1;
    for (int i = 1; i < times; i++) {
      ratios[i] = Math.exp(free[i]);
    }
    return ratios;
  }

  private static double[][] scaled(double[][] matrix, double[] ratios) {
    for (int i = 0; i < ratios.length; i++) {
      for (int j = 0; j < ratios.length; j++) {
        matrix[i][j] *= ratios[i] * ratios[j];
      }
    }
    return matrix;
  }
}
