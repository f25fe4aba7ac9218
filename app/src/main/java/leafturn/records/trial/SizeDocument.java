package leafturn.records.trial;

import java.util.List;
import leafturn.trials.power.SimulationQuestion;
import leafturn.trials.power.SizeQuestion;
import org.jspecify.annotations.Nullable;

/**
 * What a file asks about the size of a trial.
 *
 * @param question in words; empty without one
 * @param size the question
 * @param log whether differences are those of logarithms, ratios in the file
 * @param outcome whose starting values are used; null where variances are the file's own
 * @param variances all that are used, and where they come from
 * @param cores wanted for a relative error; null where not asked
 * @param simulation trials to simulate; null where not asked
 */
public record SizeDocument(
    String question,
    SizeQuestion size,
    boolean log,
    @Nullable String outcome,
    List<UsedVariance> variances,
    @Nullable CoresWanted cores,
    @Nullable SimulationQuestion simulation) {
  public SizeDocument {
    variances = List.copyOf(variances);
  }

  /**
   * A variance that is used.
   *
   * @param part what varies
   * @param value as it was given: a standard deviation, a CV, a variance or a correlation
   * @param unit of the value
   * @param variance it stands for; the value itself for a correlation
   * @param low low end of the value's plausible range; NaN where none is known
   * @param high high end
   * @param source where the value comes from
   * @param status published, derived, assumed, common practice, or given
   */
  public record UsedVariance(
      String part,
      double value,
      String unit,
      double variance,
      double low,
      double high,
      String source,
      String status) {}

  /**
   * Cores so that their mean lies within a relative error.
   *
   * @param cv between cores, as a fraction
   * @param errorFraction of the mean
   * @param level of confidence
   */
  public record CoresWanted(double cv, double errorFraction, double level) {}
}
