package leafturn.trials.analysis.paired;

import leafturn.trials.analysis.data.TrialFaultException;

/**
 * The exact randomisation test of paired differences: if the treatment does nothing, each
 * difference might as well have had the other sign.
 *
 * @source fisher1935, section 21
 */
public final class SignFlipTest {
  /** Beyond this many yards the sums are too many to list. */
  public static final int MOST_YARDS = 26;

  /** Sums this close count as equal: they differ by rounding alone. */
  private static final double SAME = 1e-9;

  private SignFlipTest() {}

  /**
   * The share of all sign patterns whose sum is at least as far from zero as the observed one.
   *
   * @param differences one for each yard whose side was drawn at random, at most 26
   * @throws TrialFaultException for more yards, or none
   */
  public static double p(double[] differences) {
    if (differences.length == 0 || differences.length > MOST_YARDS) {
      throw new TrialFaultException(
          "The exact sign-flip test takes 1 to %d yards, not %d; use the t interval beyond."
              .formatted(MOST_YARDS, differences.length));
    }
    double observed = 0;
    double size = 0;
    for (double difference : differences) {
      observed += difference;
      size += Math.abs(difference);
    }
    double bound = Math.abs(observed) - SAME * size;
    long extreme = 0;
    double sum = -total(differences);
    int[] signs = new int[differences.length];
    long patterns = 1L << differences.length;
    for (long pattern = 1; ; pattern++) {
      extreme += Math.abs(sum) >= bound ? 1 : 0;
      if (pattern == patterns) {
        return (double) extreme / patterns;
      }
      int flipped = Long.numberOfTrailingZeros(pattern);
      sum += signs[flipped] == 0 ? 2 * differences[flipped] : -2 * differences[flipped];
      signs[flipped] = 1 - signs[flipped];
    }
  }

  private static double total(double[] differences) {
    double sum = 0;
    for (double difference : differences) {
      sum += difference;
    }
    return sum;
  }

  /** The smallest two-sided p that this many yards can give. */
  public static double smallestP(int yards) {
    return Math.min(1, 2 / Math.pow(2, yards));
  }
}
