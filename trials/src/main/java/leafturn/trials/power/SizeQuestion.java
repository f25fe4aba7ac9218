package leafturn.trials.power;

import org.jspecify.annotations.Nullable;

/**
 * What is asked about the size of a trial.
 *
 * @param design all but the number of units
 * @param range the same design with the least and the largest variances that are plausible; null
 *     where they are known
 * @param test how a difference is tested
 * @param any whether the F test of all arms counts, two of them apart and the rest midway; else the
 *     t test of two arms
 * @param power wanted, above alpha and below 1
 * @param difference that is to be found, above 0; null where none was named
 * @param margin of equivalence, above 0; null where none was named
 * @param trueDifference that equivalence is to be shown under, smaller than the margin
 * @param units planned; null where their number is asked
 */
public record SizeQuestion(
    Design design,
    @Nullable Range range,
    DifferenceTest test,
    boolean any,
    double power,
    @Nullable Double difference,
    @Nullable Double margin,
    double trueDifference,
    @Nullable Integer units) {

  /** A design at the ends of what is plausible. */
  public record Range(Design low, Design high) {}

  public SizeQuestion {
    if (!(power > test.alpha() && power < 1)) {
      throw new IllegalArgumentException("the power lies above alpha and below 1");
    }
    if (difference != null && !(difference > 0)) {
      throw new IllegalArgumentException("the difference is above 0");
    }
    if (margin != null && !(margin > Math.abs(trueDifference))) {
      throw new IllegalArgumentException("the margin is above 0 and above the true difference");
    }
    if (units != null && units < design.fewestUnits()) {
      throw new IllegalArgumentException("there are too few units");
    }
  }

  /** Whether only a difference in the expected direction counts. */
  public boolean isOneSided() {
    return test.sides() == 1 && !any;
  }

  /**
   * The smallest p that drawing lots anew could give in the test that is asked for; NaN for a list
   * of layouts.
   */
  public double smallestP(int planned) {
    return isOneSided() ? design.smallestOneSidedP(planned) : design.smallestP(planned);
  }

  /**
   * The same where as many yards have it left as right; NaN for an odd number and for what is no
   * split yard.
   */
  public double smallestPBalanced(int planned) {
    if (design.layout() != Layout.SPLIT_YARD) {
      return Double.NaN;
    }
    double both = Design.smallestPBalanced(planned);
    return isOneSided() ? both / 2 : both;
  }

  /** The same for another design, a part of its range. */
  SizeQuestion of(Design other) {
    return new SizeQuestion(
        other, null, test, any, power, difference, margin, trueDifference, units);
  }
}
