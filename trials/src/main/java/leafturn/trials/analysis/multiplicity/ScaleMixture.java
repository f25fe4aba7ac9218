package leafturn.trials.analysis.multiplicity;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Gamma;

/**
 * Averages a function of w = q s over s, the root of a chi squared over its degrees of freedom. The
 * trapezoidal rule on the logarithm of s converges faster than any power, since the integrand falls
 * to nothing at both ends.
 *
 * @source trefethen2014, section 5
 */
final class ScaleMixture {
  private static final double ALMOST_NORMAL_DF = 1e7;

  /** Logarithm below which the density is nothing beside its peak. */
  private static final double NOTHING = -46;

  private ScaleMixture() {}

  /**
   * The mean of {@code function(q s)}.
   *
   * @param df above 0; very large or infinite for s = 1
   */
  static double mean(double q, double df, DoubleUnaryOperator function) {
    if (df > ALMOST_NORMAL_DF) {
      return function.applyAsDouble(q);
    }
    double step = Math.min(0.2, 0.45 / Math.sqrt(2 * df));
    double constant = Math.log(2) + df / 2 * Math.log(df / 2) - Gamma.logGamma(df / 2);
    double peak = -df / 2;
    double sum = 0;
    for (int direction = -1; direction <= 1; direction += 2) {
      for (int i = direction < 0 ? 0 : 1; ; i++) {
        double logScale = direction * i * step;
        double scale = Math.exp(logScale);
        double logDensity = df * logScale - df / 2 * scale * scale;
        if (logDensity - peak < NOTHING) {
          break;
        }
        sum += Math.exp(constant + logDensity) * function.applyAsDouble(q * scale);
      }
    }
    return sum * step;
  }
}
