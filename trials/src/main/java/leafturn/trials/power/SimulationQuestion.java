package leafturn.trials.power;

import leafturn.trials.analysis.model.TrialModel;
import org.jspecify.annotations.Nullable;

/**
 * Trials to simulate, each whole, and each analysed as it is planned.
 *
 * @param size design, test, true difference, margin and units
 * @param around variances that the design takes out, or that belong to years
 * @param log whether values are the exponentials of what adds up
 * @param analysis the model; null for the usual one of the design, on season means
 * @param trials how many, 1,000 or more for a power to two digits
 * @param seed any number; the same seed gives the same answer on any number of threads
 */
public record SimulationQuestion(
    SizeQuestion size,
    Surroundings around,
    boolean log,
    @Nullable MixedAnalysis analysis,
    int trials,
    long seed) {
  public SimulationQuestion {
    if (size.units() == null) {
      throw new IllegalArgumentException("a number of units is needed to simulate");
    }
    if (trials < 1) {
      throw new IllegalArgumentException("at least one trial is simulated");
    }
  }

  /**
   * A mixed model, and by which of its results a difference counts as found.
   *
   * @param model over the columns of the design
   * @param term whose test counts
   * @param byContrast whether the first of the model's comparisons counts instead
   */
  public record MixedAnalysis(TrialModel model, String term, boolean byContrast) {}
}
