package leafturn.trials.power;

/** Values that vary by a share of themselves, on the scale of logarithms. */
public final class LogScale {
  private LogScale() {}

  /**
   * Variance of the logarithm, log(1 + CV²).
   *
   * @param cv standard deviation over mean, as a fraction, 0 or more
   * @source definition
   */
  public static double variance(double cv) {
    return Math.log1p(cv * cv);
  }

  /**
   * Standard deviation over mean of a value whose logarithm has a variance.
   *
   * @source definition
   */
  public static double cv(double variance) {
    return Math.sqrt(Math.expm1(variance));
  }
}
