package leafturn.trials.power;

import leafturn.trials.design.layout.CyclicSquares;
import org.hipparchus.special.Gamma;

/**
 * A trial's design, the number of its units aside.
 *
 * @param layout how arms lie on the ground
 * @param arms of the practice, 2 or more
 * @param secondArms of the second factor; 1 without one
 * @param comparesSecond whether the second factor is the one that is asked about
 * @param years only for yards and years; 1 otherwise
 * @param variance what makes plots differ
 * @param wholePlot variance between whole plots (split plot) or strips of the practice (strip plot)
 * @param secondStrip variance between strips of the second factor (strip plot)
 * @param sampling how often a plot is measured
 * @param perLawn pairs of strips on each lawn, or plots of each arm on each lawn of a listed
 *     layout; 1 otherwise
 */
public record Design(
    Layout layout,
    int arms,
    int secondArms,
    boolean comparesSecond,
    int years,
    PlotVariance variance,
    double wholePlot,
    double secondStrip,
    Sampling sampling,
    int perLawn) {

  /** A design whose lawns have no number of their own. */
  public Design(
      Layout layout,
      int arms,
      int secondArms,
      boolean comparesSecond,
      int years,
      PlotVariance variance,
      double wholePlot,
      double secondStrip,
      Sampling sampling) {
    this(
        layout,
        arms,
        secondArms,
        comparesSecond,
        years,
        variance,
        wholePlot,
        secondStrip,
        sampling,
        1);
  }

  /** The halves of yards, one number for each. */
  public static Design splitYards(PlotVariance variance, Sampling sampling) {
    return new Design(Layout.SPLIT_YARD, 2, 1, false, 1, variance, 0, 0, sampling);
  }

  /** A design with one factor. */
  public static Design oneFactor(
      Layout layout, int arms, PlotVariance variance, Sampling sampling) {
    return new Design(layout, arms, 1, false, 1, variance, 0, 0, sampling);
  }

  /** The same with so many pairs of strips, or plots of each arm, on each lawn. */
  public Design onEachLawn(int number) {
    return new Design(
        layout,
        arms,
        secondArms,
        comparesSecond,
        years,
        variance,
        wholePlot,
        secondStrip,
        sampling,
        number);
  }

  /** The same with other variances or sampling of its plots. */
  public Design with(PlotVariance others, Sampling otherSampling) {
    return new Design(
        layout,
        arms,
        secondArms,
        comparesSecond,
        years,
        others,
        wholePlot,
        secondStrip,
        otherSampling,
        perLawn);
  }

  /** Arms of the factor that is asked about. */
  public int comparedArms() {
    return comparesSecond ? secondArms : arms;
  }

  /**
   * Variance of the difference between two arms' means.
   *
   * @param units yards, blocks, squares or plots per arm; may be a fraction
   * @source common practice, no source
   */
  public double varianceOfDifference(double units) {
    double plot = variance.ofSeasonMean(sampling);
    return switch (layout) {
      case SPLIT_YARD, INDEPENDENT_GROUPS, RANDOMISED_BLOCK, PAIRED_STRIPS -> 2 * plot / units;
      case LISTED -> 2 * plot / (units * perLawn);
      case LATIN_SQUARE -> 2 * plot / (arms * units);
      case SPLIT_PLOT ->
          comparesSecond ? 2 * plot / (units * arms) : 2 * (wholePlot + plot / secondArms) / units;
      case STRIP_PLOT ->
          comparesSecond
              ? 2 * (secondStrip + plot / arms) / units
              : 2 * (wholePlot + plot / secondArms) / units;
      case YARDS_AND_YEARS ->
          throw new IllegalStateException("yards and years have no formula; simulate them");
    };
  }

  /**
   * Degrees of freedom that the difference is judged by.
   *
   * @param units yards, blocks, squares or plots per arm; may be a fraction
   * @source common practice, no source
   */
  public double degreesOfFreedom(double units) {
    return switch (layout) {
      case SPLIT_YARD, PAIRED_STRIPS, YARDS_AND_YEARS -> units - 1;
      case LISTED -> (units * perLawn - 1) * arms - units + 1;
      case INDEPENDENT_GROUPS -> arms * (units - 1);
      case RANDOMISED_BLOCK -> (arms - 1) * (units - 1);
      case LATIN_SQUARE -> (arms - 1) * (units * (arms - 1) - 1);
      case SPLIT_PLOT ->
          comparesSecond ? arms * (secondArms - 1) * (units - 1) : (arms - 1) * (units - 1);
      case STRIP_PLOT -> (comparedArms() - 1) * (units - 1);
    };
  }

  /** Fewer units leave no degree of freedom. */
  public int fewestUnits() {
    boolean needsTwo =
        layout == Layout.LATIN_SQUARE && arms == 2 || layout == Layout.LISTED && perLawn == 1;
    return needsTwo ? 2 : layout.fewest();
  }

  /**
   * The smallest p that drawing lots anew could give. It is that of one comparison of two arms as
   * the findings test it: they change places within each yard, block and main plot, and in a square
   * all arms are drawn anew; in independent groups it is that of all arms. For a split yard each
   * yard's side is drawn by coin; of paired strips one coin lays two pairs of a lawn. NaN for a
   * list of layouts, which is not known here.
   *
   * @param units whole
   * @source fisher1935, section 21
   */
  public double smallestP(int units) {
    double orders = logFactorial(comparedArms());
    double swaps = Math.log(2);
    double log =
        switch (layout) {
          case SPLIT_YARD, RANDOMISED_BLOCK, STRIP_PLOT, YARDS_AND_YEARS -> swaps * (1 - units);
          case INDEPENDENT_GROUPS ->
              orders + arms * logFactorial(units) - logFactorial(arms * units);
          case PAIRED_STRIPS -> swaps * (1 - coins(units));
          case LISTED -> Double.NaN;
          case LATIN_SQUARE -> swaps + units * Math.log(CyclicSquares.smallestP(arms) / 2);
          case SPLIT_PLOT -> swaps * (1 - (comparesSecond ? units * arms : units));
        };
    return Math.min(1, Math.exp(log));
  }

  /**
   * The same where only the expected direction counts, of one comparison of two arms: the mirror
   * image of the drawn layout speaks for the other direction and no longer counts.
   *
   * @param units whole
   * @source fisher1935, section 21
   */
  public double smallestOneSidedP(int units) {
    return layout == Layout.INDEPENDENT_GROUPS
        ? Math.exp(2 * logFactorial(units) - logFactorial(2 * units))
        : smallestP(units) / 2;
  }

  /**
   * The same as by coin, of both directions, where half of the yards are returned on the left, half
   * on the right; NaN for an odd number, which cannot be balanced.
   *
   * @param units whole
   * @source fisher1935, section 21
   */
  public static double smallestPBalanced(int units) {
    if (units % 2 != 0) {
      return Double.NaN;
    }
    double log = Math.log(2) + 2 * logFactorial(units / 2) - logFactorial(units);
    return Math.min(1, Math.exp(log));
  }

  /**
   * Tosses that lay paired strips: on each lawn one for two pairs, and one for a pair left over.
   */
  public int coins(int pairs) {
    int left = pairs % perLawn;
    return pairs / perLawn * ((perLawn + 1) / 2) + (left + 1) / 2;
  }

  private static double logFactorial(int n) {
    return Gamma.logGamma(n + 1.0);
  }
}
