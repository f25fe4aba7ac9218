package leafturn.trials.power;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How large a trial has to be, or what a trial of its size can show, by formula.
 *
 * @param question what was asked
 * @param forDifference units needed to find the difference; null where none was named
 * @param forEquivalence units needed to show equivalence; null where no margin was named
 * @param at what the planned number of units can show; null where none was planned
 * @param more what more cores or dates would do; null where they lower nothing
 * @param table what other numbers of units can show
 */
public record SizeAnswer(
    SizeQuestion question,
    @Nullable Needed forDifference,
    @Nullable Needed forEquivalence,
    @Nullable AtUnits at,
    @Nullable MoreSampling more,
    List<AtUnits> table) {

  /**
   * Units needed.
   *
   * @param exact before rounding up, all rejections counted that the question counts; infinite
   *     beyond a million
   * @param exactNearTail the same where only rejections in the true direction count
   * @param whole rounded up; 0 beyond a million
   * @param low whole, with the least variances that are plausible; 0 where unknown
   * @param high whole, with the largest; 0 where unknown or beyond a million
   */
  public record Needed(double exact, double exactNearTail, int whole, int low, int high) {}

  /**
   * What a number of units can show; NaN where it was not asked or cannot be.
   *
   * @param units the number
   * @param df degrees of freedom
   * @param se standard error of the difference between two arms
   * @param power to find the difference, as the question counts rejections
   * @param powerBothTails the same, all rejections counted
   * @param powerNearTail the same, only those in the true direction
   * @param detectable the smallest difference found with the wanted power
   * @param detectableNearTail the same, only rejections in the true direction counted
   * @param equivalencePower to show that the difference is within the margin
   * @param smallestMargin the smallest margin shown with the wanted power
   * @param smallestP by drawing lots anew, each unit by itself, in the test that is asked for
   * @param smallestPBalanced the same where as many yards have it left as right
   */
  public record AtUnits(
      int units,
      double df,
      double se,
      double power,
      double powerBothTails,
      double powerNearTail,
      double detectable,
      double detectableNearTail,
      double equivalencePower,
      double smallestMargin,
      double smallestP,
      double smallestPBalanced) {}

  /**
   * What more cores or dates would do, beside more units.
   *
   * @param units at which it is looked at
   * @param variance of the difference in one unit
   * @param floor what is left of it however many cores and dates are taken
   * @param power to find the difference; NaN where none was named, as all that follow
   * @param tenfoldCores power with ten times the cores
   * @param tenfoldDates power with ten times the dates
   * @param atFloor power with any number of cores and dates
   * @param moreUnits a quarter more units, rounded up
   * @param powerOfMoreUnits with them
   */
  public record MoreSampling(
      int units,
      double variance,
      double floor,
      double power,
      double tenfoldCores,
      double tenfoldDates,
      double atFloor,
      int moreUnits,
      double powerOfMoreUnits) {}

  public SizeAnswer {
    table = List.copyOf(table);
  }
}
