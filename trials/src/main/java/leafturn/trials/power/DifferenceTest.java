package leafturn.trials.power;

import leafturn.trials.analysis.numeric.Tails;

/**
 * How a difference is to be tested, and what its power then is.
 *
 * @param alpha chance of finding a difference that is not there, above 0 and below 0.5
 * @param sides 2, or 1 where only a difference in the expected direction counts
 * @param rejections which rejections count as having found the difference
 */
public record DifferenceTest(double alpha, int sides, Rejections rejections) {
  private static final double FURTHEST = 1e6;
  private static final double FURTHEST_OF_ANY = 1e4;
  private static final double LARGEST_F = 1e12;

  /** Which rejections of a two-sided test count. */
  public enum Rejections {
    /** Both, the wrong direction too: the exact power of the test as it is done. */
    BOTH_TAILS("both-tails"),
    /** Those in the true direction alone, as tables of sample sizes usually have it. */
    NEAR_TAIL("near-tail");

    private final String word;

    Rejections(String word) {
      this.word = word;
    }

    /** The word in files. */
    public String word() {
      return word;
    }
  }

  public DifferenceTest {
    if (!(alpha > 0 && alpha < 0.5)) {
      throw new IllegalArgumentException("alpha is " + alpha + ", but must lie between 0 and 0.5");
    }
    if (sides != 1 && sides != 2) {
      throw new IllegalArgumentException("a test has 1 or 2 sides, not " + sides);
    }
  }

  /** The same test with other rejections counted. */
  public DifferenceTest counting(Rejections others) {
    return new DifferenceTest(alpha, sides, others);
  }

  /** The t beyond which a difference is found. */
  public double criticalT(double df) {
    return Tails.tQuantileTwoSided(sides == 2 ? alpha : 2 * alpha, df);
  }

  /**
   * The chance to find a difference.
   *
   * @param shift the true difference in its standard errors, 0 or more
   * @param df above 0
   * @source abramowitz1964, eq. 26.7.9
   */
  public double power(double shift, double df) {
    return power(shift, df, criticalT(df));
  }

  private double power(double shift, double df, double criticalT) {
    double near = Noncentral.tAbove(criticalT, df, shift);
    return sides == 2 && rejections == Rejections.BOTH_TAILS
        ? near + Noncentral.tAbove(criticalT, df, -shift)
        : near;
  }

  /**
   * The true difference, in its standard errors, that is found with a power.
   *
   * @param power above alpha and below 1
   * @param df above 0
   * @source abramowitz1964, eq. 26.7.9
   */
  public double detectableShift(double power, double df) {
    double t = criticalT(df);
    return Search.rising(shift -> power(shift, df, t) - power, 0, FURTHEST);
  }

  /**
   * The chance that the F test of several arms finds anything, where two arms lie apart and the
   * others midway between them, the least favourable case.
   *
   * @param arms 2 or more
   * @param shift the difference of those two in its standard errors
   * @param df above 0
   * @source abramowitz1964, eq. 26.6.20
   */
  public double powerOfAny(int arms, double shift, double df) {
    return Noncentral.fAbove(criticalF(arms - 1.0, df), arms - 1.0, df, shift * shift);
  }

  private double criticalF(double numeratorDf, double df) {
    if (numeratorDf == 1) {
      double t = Tails.tQuantileTwoSided(alpha, df);
      return t * t;
    }
    return Search.rising(f -> alpha - Tails.fAbove(f, numeratorDf, df), 0, LARGEST_F);
  }

  /** As {@link #detectableShift} for {@link #powerOfAny}. */
  public double detectableShiftOfAny(double power, int arms, double df) {
    double critical = criticalF(arms - 1.0, df);
    return Search.rising(
        shift -> Noncentral.fAbove(critical, arms - 1.0, df, shift * shift) - power,
        0,
        FURTHEST_OF_ANY);
  }
}
