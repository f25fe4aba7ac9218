package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.quantity.DisplayNumber;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * The power under which values scatter alike around the means of their groups: about 0 asks for
 * logarithms, about 1 for the values as they are.
 *
 * @param lambda the most likely power
 * @param lower lower 95 % limit
 * @param upper upper 95 % limit
 */
public record BoxCox(double lambda, double lower, double upper) {
  private static final double WIDEST = 5;

  /** Of the difference that stands for the slope: its error is of the order of 1e-8. */
  private static final double STEP = 1e-4;

  /** Half the 95 % quantile of chi squared with one degree of freedom. */
  private static final double DROP = 1.920729410347062;

  /**
   * The profile l(λ) = -n/2 log RSS(λ) of the values (y^λ - 1) / (λ ȳ^(λ - 1)), ȳ the geometric
   * mean, around the means of their groups, with the limits at which it has fallen by χ²(0.95;
   * 1)/2.
   *
   * @param values positive
   * @param groups the group of each value
   * @throws IllegalArgumentException when a value is not positive, nothing scatters, or the values
   *     lie so far apart that powers of them overflow
   * @source box1964
   */
  public static BoxCox profile(double[] values, List<String> groups) {
    double logs = 0;
    for (double value : values) {
      if (!(value > 0)) {
        throw new IllegalArgumentException(
            "%s has no logarithm; powers are compared for positive values".formatted(value));
      }
      logs += Math.log(value) / values.length;
    }
    double meanLog = logs;
    UnivariateFunction likelihood = lambda -> logLikelihood(values, groups, meanLog, lambda);
    if (!Double.isFinite(likelihood.value(1))) {
      throw new IllegalArgumentException("the values of every group are all equal");
    }
    try {
      double best = highest(likelihood);
      double level = likelihood.value(best) - DROP;
      return new BoxCox(
          best, limit(likelihood, level, best, -WIDEST), limit(likelihood, level, best, WIDEST));
    } catch (MathRuntimeException unbounded) {
      throw new IllegalArgumentException(
          "the values lie too far apart for a power to be found", unbounded);
    }
  }

  /** Where the slope of the profile passes zero; the end it rises to where it does not. */
  private static double highest(UnivariateFunction likelihood) {
    UnivariateFunction slope =
        lambda -> (likelihood.value(lambda + STEP) - likelihood.value(lambda - STEP)) / (2 * STEP);
    if (slope.value(-WIDEST) <= 0) {
      return -WIDEST;
    }
    return slope.value(WIDEST) >= 0
        ? WIDEST
        : new BrentSolver(1e-9).solve(1000, slope, -WIDEST, WIDEST);
  }

  private static double limit(UnivariateFunction at, double level, double best, double end) {
    if (at.value(end) > level) {
      return end;
    }
    return new BrentSolver(1e-10)
        .solve(1000, x -> at.value(x) - level, Math.min(best, end), Math.max(best, end));
  }

  private static double logLikelihood(
      double[] values, List<String> groups, double meanLog, double lambda) {
    Map<String, List<Double>> byGroup = new LinkedHashMap<>();
    for (int i = 0; i < values.length; i++) {
      byGroup
          .computeIfAbsent(groups.get(i), group -> new ArrayList<>())
          .add(transformed(values[i], meanLog, lambda));
    }
    double squares = 0;
    for (List<Double> group : byGroup.values()) {
      double mean = group.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
      squares += group.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum();
    }
    return -values.length / 2.0 * Math.log(squares);
  }

  /**
   * The value less what is the same for all: with z = y / ȳ it is ȳ (z^λ - 1) / λ, in which no
   * figure of a large or small value is lost beside the 1. Near 0 the power becomes the logarithm;
   * expm1 keeps the figures there.
   */
  private static double transformed(double value, double meanLog, double lambda) {
    double log = Math.log(value) - meanLog;
    return Math.exp(meanLog) * (lambda == 0 ? log : Math.expm1(lambda * log) / lambda);
  }

  /** What it says of the scale of an outcome, in a sentence. */
  public Remark remark(String outcome, boolean onLogScale) {
    String name = outcome.replace('_', ' ');
    String power =
        "Box-Cox power %s, 95 %% limits %s to %s; 1 asks for the values as they are, 0 for their logarithms"
            .formatted(
                DisplayNumber.decimals(lambda, 2),
                DisplayNumber.decimals(lower, 2),
                DisplayNumber.decimals(upper, 2));
    if (!onLogScale && lower > 1) {
      return Remark.warning(
          "The values of %s do not scatter evenly as they are (%s): the higher they are, the closer"
              + " they lie, which logarithms would make worse; look for a ceiling of the scale, and"
              + " take the result with care.",
          name, power);
    }
    if (!onLogScale && upper < 1) {
      return Remark.warning(
          "The values of %s do not scatter evenly as they are (%s); compare it on the log scale, as"
              + " a ratio.",
          name, power);
    }
    if (onLogScale && (lower > 0 || upper < 0)) {
      return Remark.warning(
          "The logarithms of %s do not scatter evenly (%s); its scale was fixed beforehand and"
              + " stays.",
          name, power);
    }
    return Remark.note("The scale of %s fits (%s).", name, power);
  }
}
