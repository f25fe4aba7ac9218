package leafturn.trials.analysis.diagnostics;

import leafturn.trials.analysis.numeric.Tails;

/** The largest deviation from the mean that chance gives in a sample of independent values. */
public final class Grubbs {
  private Grubbs() {}

  /**
   * The two-sided critical value of the largest deviation in standard deviations.
   *
   * @param values how many, 3 or more
   * @param alpha level of the test, as 0.05
   * @throws IllegalArgumentException for fewer than 3 values
   * @source grubbs1969, section 4
   */
  public static double critical(int values, double alpha) {
    if (values < 3) {
      throw new IllegalArgumentException("values is " + values + "; Grubbs' test needs 3 or more");
    }
    double t = Tails.tQuantileTwoSided(alpha / values, values - 2);
    return (values - 1) / Math.sqrt(values) * Math.sqrt(t * t / (values - 2 + t * t));
  }
}
