package leafturn.trials.analysis.numeric;

import org.hipparchus.special.Beta;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/** Tail probabilities and quantiles, with full relative accuracy far out in the tails. */
public final class Tails {
  private static final double ALMOST_NORMAL_DF = 1e9;

  private Tails() {}

  /**
   * P(F &gt; f).
   *
   * @param f 0 or more
   * @param numeratorDf above 0
   * @param denominatorDf above 0, may be infinite
   * @source abramowitz1964, eq. 26.6.2
   */
  public static double fAbove(double f, double numeratorDf, double denominatorDf) {
    if (!(f > 0)) {
      return 1;
    }
    if (denominatorDf > ALMOST_NORMAL_DF) {
      return Gamma.regularizedGammaQ(numeratorDf / 2, f * numeratorDf / 2);
    }
    double x = denominatorDf / (denominatorDf + numeratorDf * f);
    return Beta.regularizedBeta(x, denominatorDf / 2, numeratorDf / 2);
  }

  /** P(|T| &gt; |t|), df may be a fraction or infinite. */
  public static double tBeyond(double t, double df) {
    return fAbove(t * t, 1, df);
  }

  /** P(T &gt; t). */
  public static double tAbove(double t, double df) {
    double beyond = tBeyond(t, df) / 2;
    return t >= 0 ? beyond : 1 - beyond;
  }

  /** P(chi squared &gt; x). */
  public static double chiSquaredAbove(double x, double df) {
    return x <= 0 ? 1 : Gamma.regularizedGammaQ(df / 2, x / 2);
  }

  /** P(Z &le; z) of the standard normal. */
  public static double normalBelow(double z) {
    return 0.5 * Erf.erfc(-z / Math.sqrt(2));
  }

  /**
   * The t that is exceeded in size with the given probability, by bisection on the logarithm and
   * Newton steps, so that it holds for fractions of degrees of freedom too.
   *
   * @param beyondFraction P(|T| &gt; t), above 0 and below 1
   */
  public static double tQuantileTwoSided(double beyondFraction, double df) {
    double low = 0;
    double high = 1;
    while (tBeyond(high, df) > beyondFraction && high < 1e150) {
      low = high;
      high *= 2;
    }
    for (int i = 0; i < 200 && high - low > 1e-15 * high; i++) {
      double middle = (low + high) / 2;
      if (tBeyond(middle, df) > beyondFraction) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
