package leafturn.trials.findings;

import leafturn.trials.analysis.numeric.Tails;
import leafturn.trials.analysis.paired.PairedDifference.Interval;
import leafturn.trials.analysis.paired.PairedDifference.Verdict;
import leafturn.trials.design.Contrast;
import org.jspecify.annotations.Nullable;

/**
 * The season's difference of two arms, on the scale of the analysis.
 *
 * @param units how many stand behind it
 * @param pAdjusted for the planned comparisons of the outcome, or for all exploratory ones
 * @param equivalence two one-sided tests against the margin; null where none was fixed
 * @param leastDetectable difference found in four of five such trials; NaN where it is not known
 * @param newUnit interval of 95 % for the difference in a unit of the same kind; null where the
 *     design does not give it
 * @param verdict null for an exploratory outcome, and where none may be given
 */
public record Effect(
    Contrast contrast,
    int units,
    Estimated estimated,
    double pAdjusted,
    @Nullable Equivalence equivalence,
    double leastDetectable,
    @Nullable Interval newUnit,
    @Nullable Verdict verdict) {

  /** Level of the tests. */
  public static final double ALPHA = 0.05;

  /**
   * A difference and how well it is known.
   *
   * @param p two-sided, before any adjustment
   * @param interval of 95 %, for all planned comparisons at once
   */
  public record Estimated(double difference, double se, double df, double p, Interval interval) {
    /** The difference in standard errors. */
    public double t() {
      return difference / se;
    }

    /**
     * @param comparisons that intervals allow for, by Bonferroni
     */
    static Estimated of(double difference, double se, double df, int comparisons) {
      double reach = se * Tails.tQuantileTwoSided(ALPHA / comparisons, df);
      return new Estimated(
          difference, se, df, Tails.tBeyond(difference / se, df), around(difference, reach));
    }
  }

  /**
   * Two one-sided tests of equivalence.
   *
   * @param margin on the scale of the analysis
   * @param p the larger of the two, times the planned comparisons; below 0.05 the difference is
   *     smaller than the margin
   * @param interval of 90 %, for all planned comparisons at once
   */
  public record Equivalence(double margin, double p, Interval interval) {
    /**
     * @param margin on the scale of the analysis, above 0; NaN for none
     * @source schuirmann1987, section 2
     */
    static @Nullable Equivalence of(Estimated found, double margin, int comparisons) {
      if (!(margin > 0)) {
        return null;
      }
      double lower = Tails.tAbove((found.difference + margin) / found.se, found.df);
      double upper = Tails.tAbove((margin - found.difference) / found.se, found.df);
      double reach = found.se * Tails.tQuantileTwoSided(2 * ALPHA / comparisons, found.df);
      return new Equivalence(
          margin,
          Math.min(1, comparisons * Math.max(lower, upper)),
          around(found.difference, reach));
    }
  }

  private static Interval around(double middle, double reach) {
    return new Interval(middle - reach, middle + reach);
  }

  /** Whether its verdict is that the arms differ. */
  boolean differs() {
    return verdict == Verdict.DIFFERS || verdict == Verdict.DIFFERS_BUT_EQUIVALENT;
  }

  /**
   * Whether its t test shows a difference and the verdict claims none, since no layout of those
   * that might have been drawn could show one.
   */
  public boolean isHeldBack(RandomisationTest drawn) {
    return drawn.canShowNothing() && verdict == Verdict.UNDECIDED && pAdjusted < ALPHA;
  }

  /** The same with another adjusted p. */
  Effect adjusted(double p) {
    return new Effect(
        contrast, units, estimated, p, equivalence, leastDetectable, newUnit, verdict);
  }

  /** The same as a description. */
  Effect withoutVerdict() {
    return new Effect(
        contrast, units, estimated, pAdjusted, equivalence, leastDetectable, newUnit, null);
  }

  /**
   * The same with its verdict: {@code differs} says whether the tests of a difference are agreed.
   */
  Effect judged(boolean differs) {
    boolean equivalent = equivalence != null && equivalence.p < ALPHA;
    Verdict found = equivalent ? Verdict.EQUIVALENT : Verdict.UNDECIDED;
    if (differs) {
      found = equivalent ? Verdict.DIFFERS_BUT_EQUIVALENT : Verdict.DIFFERS;
    }
    return with(found);
  }

  private Effect with(Verdict found) {
    return new Effect(
        contrast, units, estimated, pAdjusted, equivalence, leastDetectable, newUnit, found);
  }
}
