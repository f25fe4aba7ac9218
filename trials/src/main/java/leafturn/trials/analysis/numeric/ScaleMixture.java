package leafturn.trials.analysis.numeric;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Gamma;

/**
 * Averages a function over s, the root of a chi squared over its degrees of freedom: by how much
 * the standard error of a trial misses the true one. The trapezoidal rule on the logarithm of s
 * converges faster than any power, since the integrand falls to nothing at both ends.
 *
 * @source trefethen2014, section 5
 */
public final class ScaleMixture {
  private static final double ALMOST_NORMAL_DF = 1e7;

  /** Logarithm below which the density is nothing beside its peak. */
  private static final double NOTHING = -46;

  /** A step of this share of a normal curve's width leaves an error below 1e-40. */
  private static final double SHARE_OF_WIDTH = 0.45;

  private static final int NODES = 24;
  private static final int MOST_PANELS = 2000;
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(NODES);

  private ScaleMixture() {}

  /**
   * The mean of {@code function(q s)}.
   *
   * @param df above 0; very large or infinite for s = 1
   */
  public static double mean(double q, double df, DoubleUnaryOperator function) {
    double step = Math.min(0.2, SHARE_OF_WIDTH / Math.sqrt(2 * df));
    return byTrapezoids(df, step, scale -> function.applyAsDouble(q * scale));
  }

  /**
   * The mean of a function of s that changes over a distance of {@code 1 / steepness} of log s.
   *
   * @param df above 0; very large or infinite for s = 1
   * @param steepness 0 or more
   */
  public static double meanOfSteep(double df, double steepness, DoubleUnaryOperator function) {
    double width = Math.max(Math.sqrt(2 * df), steepness);
    return byTrapezoids(df, Math.min(0.1, SHARE_OF_WIDTH / width), function);
  }

  private static double byTrapezoids(double df, double step, DoubleUnaryOperator function) {
    if (df > ALMOST_NORMAL_DF) {
      return function.applyAsDouble(1);
    }
    double constant = logConstant(df);
    double sum = 0;
    for (int direction = -1; direction <= 1; direction += 2) {
      for (int i = direction < 0 ? 0 : 1; ; i++) {
        double logScale = direction * i * step;
        double scale = Math.exp(logScale);
        double logDensity = logDensity(df, logScale);
        if (logDensity < NOTHING) {
          break;
        }
        sum += Math.exp(constant - df / 2 + logDensity) * function.applyAsDouble(scale);
      }
    }
    return sum * step;
  }

  /**
   * The mean of a function that is 0 from a largest s on, where it may have a corner: by panels of
   * Gauss and Legendre on the logarithm of s.
   *
   * @param df above 0; very large or infinite for s = 1
   * @param largest s, above 0
   * @param slope the function changes over a distance of {@code 1 / slope} of s
   */
  public static double meanBelow(
      double df, double largest, double slope, DoubleUnaryOperator function) {
    if (df > ALMOST_NORMAL_DF) {
      return largest > 1 ? function.applyAsDouble(1) : 0;
    }
    double low = end(df, -1);
    double high = Math.min(Math.log(largest), end(df, 1));
    if (!(high > low)) {
      return 0;
    }
    double constant = logConstant(df) - df / 2;
    double steepness = Math.max(Math.sqrt(2 * df), slope * Math.exp(high));
    double wanted = (high - low) * steepness / 2;
    int panels = (int) Math.max(8, Math.min(MOST_PANELS, wanted));
    double width = (high - low) / panels;
    double sum = 0;
    for (int panel = 0; panel < panels; panel++) {
      double left = low + panel * width;
      sum +=
          RULE.integrate(
                  node -> {
                    double logScale = left + width * (node + 1) / 2;
                    return Math.exp(constant + logDensity(df, logScale))
                        * function.applyAsDouble(Math.exp(logScale));
                  })
              * width
              / 2;
    }
    return sum;
  }

  /** Where the density has fallen to nothing, on one side of its peak. */
  private static double end(double df, int direction) {
    double reach = 1;
    while (logDensity(df, direction * reach) > NOTHING) {
      reach *= 2;
    }
    double near = 0;
    while (reach - near > 1e-3 * reach) {
      double middle = (near + reach) / 2;
      if (logDensity(df, direction * middle) > NOTHING) {
        near = middle;
      } else {
        reach = middle;
      }
    }
    return direction * reach;
  }

  /** Logarithm of the density of log s beside its peak at 0. */
  private static double logDensity(double df, double logScale) {
    double scale = Math.exp(logScale);
    return df * logScale - df / 2 * (scale * scale - 1);
  }

  private static double logConstant(double df) {
    return Math.log(2) + df / 2 * Math.log(df / 2) - Gamma.logGamma(df / 2);
  }
}
