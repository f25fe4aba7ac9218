package leafturn.trials.analysis.model;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * An analysis as it is asked for.
 *
 * @param response the column that is explained
 * @param scale on which it is explained
 * @param factors columns read as levels
 * @param covariates columns read as numbers
 * @param fixed terms of the fixed part, the mean aside
 * @param intercept whether the fixed part has a mean
 * @param random random terms
 * @param overTime correlation over dates; null for independent errors
 * @param degreesOfFreedom of tests and intervals
 * @param compare means to compare; null for none
 * @param levels the order of a factor's levels, where it was given
 */
public record TrialModel(
    String response,
    Scale scale,
    List<String> factors,
    List<String> covariates,
    List<Term> fixed,
    boolean intercept,
    List<RandomTerm> random,
    @Nullable OverTime overTime,
    DegreesOfFreedom degreesOfFreedom,
    @Nullable Comparison compare,
    Map<String, List<String>> levels) {
  public TrialModel {
    factors = List.copyOf(factors);
    covariates = List.copyOf(covariates);
    fixed = List.copyOf(fixed);
    random = List.copyOf(random);
    levels = Map.copyOf(levels);
  }

  /** The scale on which the response is modelled. */
  public enum Scale {
    IDENTITY("identity"),
    LOG("log"),
    ORDINAL("ordinal");

    private final String word;

    Scale(String word) {
      this.word = word;
    }

    /** The word in a model file. */
    public String word() {
      return word;
    }
  }

  /** Whether a variable is one of the factors. */
  public boolean isFactor(String variable) {
    return factors.contains(variable);
  }
}
