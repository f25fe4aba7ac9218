package leafturn.trials.findings;

import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Gamma;

/** What a trial of this size and spread can find. */
final class Detectable {
  private static final double POWER = 0.8;
  private static final double REACH = 8;
  private static final int NODES = 120;
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(NODES);

  private Detectable() {}

  /**
   * The true difference that four of five such trials would find, by the observed spread; it says
   * nothing of the difference that was observed.
   *
   * @return on the scale of the analysis, above 0
   */
  static double difference(Effect.Estimated found) {
    return shift(found.df()) * found.se();
  }

  /**
   * The true difference in standard errors that is found with a power of 0.8 by a two-sided test at
   * 0.05, counting findings in its own direction.
   *
   * @source abramowitz1964, eq. 26.7.9
   */
  static double shift(double df) {
    double critical = Tails.tQuantileTwoSided(Effect.ALPHA, df);
    double low = 0;
    double high = 1;
    while (power(high, critical, df) < POWER && high < 1e6) {
      high *= 2;
    }
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (power(middle, critical, df) < POWER) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** P(T &gt; critical): the normal tail over what the standard error may turn out to be. */
  private static double power(double shift, double critical, double df) {
    double wide = REACH / Math.sqrt(2 * df);
    double from = Math.max(0, 1 - wide);
    double half = (1 + wide - from) / 2;
    double logConstant = Math.log(2) + df / 2 * Math.log(df / 2) - Gamma.logGamma(df / 2);
    double sum = 0;
    for (int i = 0; i < NODES; i++) {
      double s = from + half * (1 + RULE.getPoint(i));
      double density = Math.exp(logConstant + (df - 1) * Math.log(s) - df * s * s / 2);
      sum += half * RULE.getWeight(i) * density * Tails.normalBelow(shift - critical * s);
    }
    return sum;
  }
}
