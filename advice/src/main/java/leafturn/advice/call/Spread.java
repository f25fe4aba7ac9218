package leafturn.advice.call;

/**
 * A computed quantity over the possible seasons: its 10th, 50th and 90th percentile.
 *
 * @param low 10th percentile
 * @param middle median
 * @param high 90th percentile
 */
public record Spread(double low, double middle, double high) {
  public Spread {
    if (!(low <= middle && middle <= high)) {
      throw new IllegalArgumentException(
          "a spread must rise from low to high, but is " + low + ", " + middle + ", " + high);
    }
  }

  /** A quantity that is the same in every possible season. */
  public static Spread exactly(double value) {
    return new Spread(value, value, value);
  }
}
