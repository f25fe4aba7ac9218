package leafturn.advice.call;

import java.util.Arrays;

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

  /**
   * The spread of values, one per possible season: order statistics with linear interpolation, the
   * p-quantile of n values at the place (n - 1) p counted from 0.
   *
   * @param values one or more, in any order, without NaN
   * @source hyndman1996, type 7
   */
  public static Spread of(double[] values) {
    if (values.length == 0) {
      throw new IllegalArgumentException("a spread needs one value or more");
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double middle = quantile(sorted, 0.5);
    return new Spread(
        Math.min(middle, quantile(sorted, 0.1)), middle, Math.max(middle, quantile(sorted, 0.9)));
  }

  private static double quantile(double[] sorted, double probability) {
    double place = (sorted.length - 1) * probability;
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /** The spread of this quantity times a positive factor. */
  Spread times(double factor) {
    return new Spread(factor * low, factor * middle, factor * high);
  }

  /** A quantity that is the same in every possible season. */
  public static Spread exactly(double value) {
    return new Spread(value, value, value);
  }
}
