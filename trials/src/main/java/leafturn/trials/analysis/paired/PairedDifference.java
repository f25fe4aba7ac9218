package leafturn.trials.analysis.paired;

import java.util.Arrays;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.numeric.Tails;

/**
 * Split yards as paired differences: one number for each yard, the summary of one half less that of
 * the other. Immune to how dates are correlated, since each half gives one number.
 *
 * @param differences one for each yard
 * @param mean of the differences
 * @param sd of the differences
 * @param se of their mean
 * @param df yards less one
 * @param t the mean in standard errors
 * @param p two-sided
 * @source common practice, no source
 */
public record PairedDifference(
    double[] differences, double mean, double sd, double se, int df, double t, double p) {

  /**
   * The paired t test.
   *
   * @param differences one for each yard, at least two and not all equal
   * @throws TrialFaultException for a single yard, which has no replicate to judge its halves by
   */
  public static PairedDifference of(double[] differences) {
    int yards = differences.length;
    if (yards < 2) {
      throw new TrialFaultException(
          "%d yard split once has no replicates: its halves may differ, but nothing tells whether the treatment is why. Give at least two yards, better ten."
              .formatted(yards));
    }
    double mean = Arrays.stream(differences).average().orElseThrow();
    double squares = Arrays.stream(differences).map(d -> (d - mean) * (d - mean)).sum();
    if (!(squares > 0)) {
      throw new TrialFaultException(
          "All %d differences are %s; where nothing varies there is nothing to judge by."
              .formatted(yards, differences[0]));
    }
    double sd = Math.sqrt(squares / (yards - 1));
    double se = sd / Math.sqrt(yards);
    double p = Tails.tBeyond(mean / se, yards - 1);
    return new PairedDifference(differences, mean, sd, se, yards - 1, mean / se, p);
  }

  /** An interval of the mean difference. */
  public record Interval(double lower, double upper) {
    /** Whether it lies between two values. */
    public boolean isWithin(double low, double high) {
      return lower > low && upper < high;
    }
  }

  /**
   * The t interval.
   *
   * @param levelFraction as 0.95
   */
  public Interval interval(double levelFraction) {
    double reach = se * Tails.tQuantileTwoSided(1 - levelFraction, df);
    return new Interval(mean - reach, mean + reach);
  }

  /**
   * Two one-sided tests of equivalence.
   *
   * @param lower p of a difference at or below minus the margin
   * @param upper p of a difference at or above the margin
   * @param p the larger of them: below the level, the difference is smaller than the margin
   */
  public record Equivalence(double lower, double upper, double p) {
    /**
     * The tests from an estimate and its standard error.
     *
     * @param df of the standard error, may be a fraction
     * @param margin above 0, in the unit of the difference
     * @source schuirmann1987, section 2
     */
    public static Equivalence of(double difference, double se, double df, double margin) {
      double lower = Tails.tAbove((difference + margin) / se, df);
      double upper = Tails.tAbove((margin - difference) / se, df);
      return new Equivalence(lower, upper, Math.max(lower, upper));
    }
  }

  /**
   * Tests whether the difference is smaller than a margin fixed beforehand.
   *
   * @param margin above 0, in the unit of the differences
   * @source schuirmann1987, section 2
   */
  public Equivalence equivalence(double margin) {
    return Equivalence.of(mean, se, df, margin);
  }

  /**
   * One-sided p that the difference is at or below minus a margin (non-inferiority).
   *
   * @param margin above 0, in the unit of the differences
   * @source common practice, no source
   */
  public double nonInferiorityP(double margin) {
    return Tails.tAbove((mean + margin) / se, df);
  }

  /**
   * An interval for the difference in a new yard of the same kind.
   *
   * @param levelFraction as 0.95
   * @source common practice, no source
   */
  public Interval newYard(double levelFraction) {
    double spread = sd * Math.sqrt(1 + 1.0 / differences.length);
    double reach = spread * Tails.tQuantileTwoSided(1 - levelFraction, df);
    return new Interval(mean - reach, mean + reach);
  }

  /** What may be said of the difference. */
  public enum Verdict {
    /** The interval leaves out zero. */
    DIFFERS("differs"),
    /** The interval of the equivalence test lies inside the margin. */
    EQUIVALENT("equivalent within the margin"),
    /** Both: a difference, but smaller than matters. */
    DIFFERS_BUT_EQUIVALENT("differs, but by less than the margin"),
    /** Neither: the trial cannot tell. */
    UNDECIDED("undecided");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** The verdict in words. */
    public String words() {
      return words;
    }
  }

  /**
   * The verdict at a level of significance and a margin fixed beforehand.
   *
   * @param alpha as 0.05
   */
  public Verdict verdict(double alpha, double margin) {
    boolean differs = p < alpha;
    boolean equivalent = equivalence(margin).p < alpha;
    if (differs) {
      return equivalent ? Verdict.DIFFERS_BUT_EQUIVALENT : Verdict.DIFFERS;
    }
    return equivalent ? Verdict.EQUIVALENT : Verdict.UNDECIDED;
  }
}
