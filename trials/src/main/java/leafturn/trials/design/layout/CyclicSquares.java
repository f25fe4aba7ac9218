package leafturn.trials.design.layout;

import java.util.stream.IntStream;
import org.hipparchus.util.ArithmeticUtils;
import org.hipparchus.util.CombinatoricsUtils;

/**
 * The Latin squares that {@link Randomisation} draws: the cyclic square with its rows, columns and
 * letters in random order. For a comparison of two letters only their places count, and these are
 * counted here: the first letter has the columns in any order, and from it to the second leads a
 * permutation of them in rounds of equal length.
 *
 * @source fisher1935
 */
public final class CyclicSquares {
  /** Larger squares have too many orders to go through, so that a sample stands for them. */
  public static final int MOST_LISTED = 6;

  /** Layouts of a sample, the trial's own with them. */
  public static final int IN_SAMPLE = 100_000;

  private CyclicSquares() {}

  /**
   * How many places two letters can have.
   *
   * @param size letters, 2 to {@link #MOST_LISTED}
   * @source definition
   */
  public static long places(int size) {
    return rounds(size).mapToLong(rounds -> places(size, rounds)).sum();
  }

  /**
   * The smallest p that drawing a square anew can give for a comparison of two letters: the least
   * likely places and those with the letters changed; for a sample, one of its layouts.
   *
   * @param size letters, 2 or more
   * @return 0 to 1
   * @source definition
   */
  public static double smallestP(int size) {
    if (size > MOST_LISTED) {
      return 1.0 / IN_SAMPLE;
    }
    double least =
        rounds(size)
            .mapToDouble(rounds -> shareOfPairs(size, rounds) / places(size, rounds))
            .min()
            .orElse(1);
    return Math.min(1, 2 * least);
  }

  /** Numbers of rounds that a size can fall into. */
  private static IntStream rounds(int size) {
    return IntStream.range(1, size).filter(rounds -> size % rounds == 0);
  }

  /** n! orders of the first letter, and n! / ((n / r)^r r!) permutations of r equal rounds. */
  private static long places(int size, int rounds) {
    long all = CombinatoricsUtils.factorial(size);
    long alike =
        ArithmeticUtils.pow((long) size / rounds, rounds) * CombinatoricsUtils.factorial(rounds);
    return all * (all / alike);
  }

  /** Of the pairs of letters those that many rounds lie between. */
  private static double shareOfPairs(int size, int rounds) {
    long pairs =
        IntStream.range(1, size)
            .filter(apart -> ArithmeticUtils.gcd(size, apart) == rounds)
            .count();
    return (double) pairs / (size - 1);
  }
}
