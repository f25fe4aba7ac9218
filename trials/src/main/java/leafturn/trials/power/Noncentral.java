package leafturn.trials.power;

import leafturn.trials.analysis.numeric.ScaleMixture;
import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/** Tails of t and F where the hypothesis tested is not true. */
public final class Noncentral {
  private static final double NOTHING = 1e-18;

  /** Beyond a square of 1 + this over df no standard error comes to lie. */
  private static final double FAR = 150;

  private Noncentral() {}

  /**
   * P(T &gt; t): the mean of a normal tail over what the standard error may turn out to be.
   *
   * @param t any number
   * @param df above 0, may be a fraction or infinite
   * @param shift the true difference in its standard errors
   * @source abramowitz1964, eq. 26.7.9
   */
  public static double tAbove(double t, double df, double shift) {
    double steepness = Math.min(Math.abs(shift), Math.abs(t) * Math.sqrt(1 + FAR / df));
    return ScaleMixture.meanOfSteep(df, steepness, scale -> Tails.normalBelow(shift - t * scale));
  }

  /**
   * P(F &gt; f), a mixture of central F by Poisson weights, summed from the largest outwards.
   *
   * @param f 0 or more
   * @param numeratorDf above 0
   * @param denominatorDf above 0
   * @param noncentrality 0 or more
   * @source abramowitz1964, eq. 26.6.20
   */
  public static double fAbove(
      double f, double numeratorDf, double denominatorDf, double noncentrality) {
    if (!(f > 0)) {
      return 1;
    }
    double x = denominatorDf / (denominatorDf + numeratorDf * f);
    long mode = (long) (noncentrality / 2);
    double sum = 0;
    for (int direction = -1; direction <= 1; direction += 2) {
      for (long j = direction < 0 ? mode : mode + 1; j >= 0; j += direction) {
        double weight = poisson(j, noncentrality / 2);
        if (weight < NOTHING) {
          break;
        }
        sum += weight * Beta.regularizedBeta(x, denominatorDf / 2, numeratorDf / 2 + j);
      }
    }
    return Math.min(1, sum);
  }

  private static double poisson(long count, double mean) {
    if (mean == 0) {
      return count == 0 ? 1 : 0;
    }
    return Math.exp(count * Math.log(mean) - mean - Gamma.logGamma(count + 1.0));
  }
}
