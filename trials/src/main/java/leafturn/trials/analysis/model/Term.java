package leafturn.trials.analysis.model;

import java.util.Arrays;
import java.util.List;

/**
 * A term of the fixed part: one variable, or the product of several.
 *
 * @param variables factors and covariates; a covariate may stand more than once, for its powers
 */
public record Term(List<String> variables) {
  public Term {
    variables = List.copyOf(variables);
  }

  /** Reads {@code variety*nitrogen}. */
  public static Term of(String text) {
    return new Term(Arrays.stream(text.split("\\*", -1)).map(String::strip).toList());
  }

  /** The same term, whatever the order of its variables. */
  public boolean sameAs(List<String> others) {
    return variables.stream().sorted().toList().equals(others.stream().sorted().toList());
  }

  @Override
  public String toString() {
    return String.join("*", variables);
  }
}
