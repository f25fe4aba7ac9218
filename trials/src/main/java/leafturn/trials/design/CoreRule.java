package leafturn.trials.design;

import java.time.LocalDate;
import java.util.List;
import leafturn.quantity.Range;

/**
 * How soil is sampled. Fifteen cores of 10 cm, one in each cell of a grid, are usual; the distance
 * from old holes is common practice, no source.
 *
 * @param perPlot cores of a plot on a date, 0 to 60; 0 where no soil is sampled
 * @param depthCm of a core, cm, 1 to 60
 * @param composites bags that a plot's cores are mixed into on a date, 1 to 4
 * @param blindDuplicateFraction of the bags of a date, those that are divided into two under
 *     different codes, 0 to 0.5; at least one bag where it is not 0
 * @param fromOldHolesM kept from the holes of all dates, m, 0.05 to 2
 * @param dates the dates on which soil is sampled, in order
 */
public record CoreRule(
    int perPlot,
    double depthCm,
    int composites,
    double blindDuplicateFraction,
    double fromOldHolesM,
    List<LocalDate> dates) {
  /** Cores of a plot on a date. */
  public static final Range PER_PLOT = new Range("perPlot", 0, 60, "");

  /** Depth of a core. */
  public static final Range DEPTH_CM = new Range("depthCm", 1, 60, "cm");

  /** Bags of a plot on a date. */
  public static final Range COMPOSITES = new Range("composites", 1, 4, "");

  /** Share of bags that are divided. */
  public static final Range BLIND_DUPLICATES = new Range("blindDuplicates", 0, 0.5, "");

  /** One bag in ten is divided where a plan does not say otherwise (common practice, no source). */
  public static final double USUAL_BLIND_DUPLICATES = 0.1;

  /** Distance from old holes. */
  public static final Range FROM_OLD_HOLES_M = new Range("fromOldHolesM", 0.05, 2, "m");

  /**
   * @throws IllegalArgumentException when a value is out of range
   */
  public CoreRule {
    PER_PLOT.checked(perPlot);
    DEPTH_CM.checked(depthCm);
    COMPOSITES.checked(composites);
    BLIND_DUPLICATES.checked(blindDuplicateFraction);
    FROM_OLD_HOLES_M.checked(fromOldHolesM);
    dates = List.copyOf(dates);
  }

  /** The same with another number of cores. */
  public CoreRule withPerPlot(int cores) {
    return new CoreRule(cores, depthCm, composites, blindDuplicateFraction, fromOldHolesM, dates);
  }
}
