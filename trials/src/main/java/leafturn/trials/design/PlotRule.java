package leafturn.trials.design;

import leafturn.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * How large plots are and what is left around them.
 *
 * @param passes mower passes side by side in a strip, guard passes included, 1 to 40
 * @param guardPasses of them on each side that are mown like the plot but not measured, 0 to 10;
 *     between the halves of a split yard, the passes left out of both
 * @param lengthM length of a plot along the passes, m, 0.5 to 500, or null for as long as the lawn
 *     allows
 * @param edgeM kept from the lawn's edge, m, 0 to 20
 * @param bedM kept from beds, trees and paths, m, 0 to 20
 */
public record PlotRule(
    int passes, int guardPasses, @Nullable Double lengthM, double edgeM, double bedM) {
  /** Mower passes in a strip. */
  public static final Range PASSES = new Range("passes", 1, 40, "");

  /** Guard passes on a side. */
  public static final Range GUARD_PASSES = new Range("guardPasses", 0, 10, "");

  /** Length of a plot. */
  public static final Range LENGTH_M = new Range("lengthM", 0.5, 500, "m");

  /** Distance kept from an edge or a bed. */
  public static final Range DISTANCE_M = new Range("edgeM and bedM", 0, 20, "m");

  /**
   * Least area that is measured of a plot, m²: less shows the eye of a rater chance spots more than
   * the plot. Common practice, no source.
   */
  public static final double LEAST_MEASURED_M2 = 1;

  /** Three passes, the outer two as guard, 1 m from edges and beds: common practice, no source. */
  public static final PlotRule USUAL = new PlotRule(3, 1, null, 1, 1);

  /**
   * @throws IllegalArgumentException when a value is out of range
   */
  public PlotRule {
    PASSES.checked(passes);
    GUARD_PASSES.checked(guardPasses);
    if (lengthM != null) {
      LENGTH_M.checked(lengthM);
    }
    DISTANCE_M.checked(edgeM);
    DISTANCE_M.checked(bedM);
  }
}
