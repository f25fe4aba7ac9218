package leafturn.trials.analysis.inference;

import leafturn.trials.analysis.fixed.FixedFit;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.Tails;
import org.jspecify.annotations.Nullable;

/**
 * A function of the coefficients; all NaN where the data cannot estimate it.
 *
 * @param value in the unit of the model's scale
 * @param se its standard error
 * @param df degrees of freedom of the standard error; 0 where nothing is left to judge it by
 */
public record Estimate(double value, double se, double df) {
  /** What cannot be estimated. */
  static final Estimate NONE = new Estimate(Double.NaN, Double.NaN, Double.NaN);

  static Estimate of(FixedFit fit, Approximation by, double @Nullable [] function) {
    if (function == null) {
      return NONE;
    }
    double value = fit.value(function);
    double variance = Matrices.form(function, by.covariance(), function);
    return new Estimate(value, Math.sqrt(Math.max(0, variance)), by.degreesOfFreedom(function));
  }

  /** Whether the data can estimate it. */
  public boolean isEstimable() {
    return !Double.isNaN(value);
  }

  /** The value in standard errors. */
  public double t() {
    return value / se;
  }

  /** Two-sided, NaN without degrees of freedom. */
  public double p() {
    return df > 0 && se > 0 ? Tails.tBeyond(t(), df) : Double.NaN;
  }
}
