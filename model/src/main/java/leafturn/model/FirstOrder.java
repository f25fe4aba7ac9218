package leafturn.model;

/** First-order loss, dx/dt = -k x. */
public final class FirstOrder {
  /**
   * Below this the series below is exact to the last bit or two, and faster than the exponential.
   */
  private static final double SERIES_LIMIT = 0.125;

  private FirstOrder() {}

  /**
   * Share lost in a time: 1 - exp(-k t). Small arguments are summed as a series, which is both
   * faster than the exponential and free of its cancellation.
   *
   * @param rateTimesTime k t, 0 or more
   * @return 0 to 1
   * @source definition
   */
  public static double lostFraction(double rateTimesTime) {
    double x = rateTimesTime;
    if (x > SERIES_LIMIT) {
      return 1 - Math.exp(-x);
    }
    // Two independent halves, even and odd powers, let the processor work on both at a time.
    double square = x * x;
    double odd =
        1 + square * (1 / 6. + square * (1 / 120. + square * (1 / 5040. + square / 362880.)));
    double even =
        0.5 + square * (1 / 24. + square * (1 / 720. + square * (1 / 40320. + square / 3628800.)));
    return x * odd - square * even;
  }
}
