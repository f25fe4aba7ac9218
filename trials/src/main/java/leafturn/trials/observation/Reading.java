package leafturn.trials.observation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One value that was read, weighed or reported, as it was given.
 *
 * @param plot code of the plot in the layout
 * @param date the day it was sampled or rated
 * @param outcome name of the outcome in the plan
 * @param value as given, for instance "6.5" or "&lt;2" for below a detection limit of 2
 * @param unit unit of the value as given, or null for one without
 * @param laboratory who measured it, or null
 * @param method extractant or method, or null
 * @param detectionLimit in the unit of the value, or null
 * @param batch the run of the laboratory it was measured in, or null
 * @param rater who rated it, or null
 * @param sample code on the bag, or null
 * @param duplicate 1 for the first measurement of a sample, 2 for its duplicate, or null
 * @param note anything to remember; may be null
 */
public record Reading(
    String plot,
    LocalDate date,
    String outcome,
    String value,
    @Nullable String unit,
    @Nullable String laboratory,
    @Nullable String method,
    @Nullable Double detectionLimit,
    @Nullable String batch,
    @Nullable String rater,
    @Nullable String sample,
    @Nullable Integer duplicate,
    @Nullable String note) {

  /** A reading of a rater or of one's own measuring, with nothing of a laboratory. */
  public static Reading own(
      String plot, LocalDate date, String outcome, String value, @Nullable String rater) {
    return new Reading(
        plot, date, outcome, value, null, null, null, null, null, rater, null, null, null);
  }
}
