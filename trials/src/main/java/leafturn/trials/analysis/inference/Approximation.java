package leafturn.trials.analysis.inference;

/**
 * How estimates of a fit are judged: by which covariance, on how many degrees of freedom. Functions
 * are weights of the coefficients of the basis of the fixed part.
 */
public interface Approximation {
  /** The covariance of the basis' coefficients by which intervals are formed. */
  double[][] covariance();

  /** Degrees of freedom of one estimate; infinite or NaN where there are none. */
  double degreesOfFreedom(double[] function);

  /**
   * Tests whether several functions of the coefficients are all zero.
   *
   * @param functions independent, {@code [function][direction]}
   */
  FTest test(double[][] functions);

  /**
   * An F statistic.
   *
   * @param numeratorDf how many functions were tested
   */
  record FTest(double numeratorDf, double denominatorDf, double f) {}
}
