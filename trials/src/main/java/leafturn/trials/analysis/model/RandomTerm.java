package leafturn.trials.analysis.model;

import java.util.List;

/**
 * Effects that vary at random between the groups that a combination of factors forms.
 *
 * @param within the factors whose combinations are the groups
 * @param slopes covariates or factors whose effects vary; none for the mean alone
 * @param intercept whether the mean varies
 * @param correlated whether the effects of one group are correlated
 */
public record RandomTerm(
    List<String> within, List<String> slopes, boolean intercept, boolean correlated) {
  public RandomTerm {
    within = List.copyOf(within);
    slopes = List.copyOf(slopes);
  }

  /** A random mean for each group. */
  public static RandomTerm mean(String... within) {
    return new RandomTerm(List.of(within), List.of(), true, true);
  }
}
