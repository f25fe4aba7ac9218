package leafturn.trials.analysis.multiplicity;

import leafturn.trials.analysis.numeric.ScaleMixture;
import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Gamma;

/**
 * The range of several means in units of an independent standard error, by the published algorithm
 * that the reference libraries use, so that results agree with theirs. With few degrees of freedom
 * its panels are too wide for a large range, and p comes out far too small, even 0: where it misses
 * the whole integral by more than a hundredth of it, the integral itself is taken.
 *
 * @source copenhaver1988
 */
public final class StudentizedRange {
  private static final GaussIntegrator INNER = new GaussIntegratorFactory().legendre(12);
  private static final GaussIntegrator OUTER = new GaussIntegratorFactory().legendre(16);
  private static final double ALMOST_NORMAL_DF = 25000;

  /** From here on the panels are narrow enough. */
  private static final double ENOUGH_DF = 30;

  private static final double MOST_MISSED_FRACTION = 0.01;

  /** Beyond this many standard errors normals are left out. */
  private static final double END = 8;

  private static final double NOTHING = -30;
  private static final double ENOUGH = 1e-14;
  private static final int MOST_PANELS = 50;

  private StudentizedRange() {}

  /**
   * P(Q &gt; q).
   *
   * @param q 0 or more
   * @param means how many, 2 or more
   * @param df of the standard error, above 0, may be a fraction or infinite
   */
  public static double above(double q, int means, double df) {
    if (!(q > 0)) {
      return 1;
    }
    if (df > ALMOST_NORMAL_DF) {
      return 1 - rangeWithin(q, means);
    }
    if (means == 2) {
      return Tails.tBeyond(q / Math.sqrt(2), df); // the range of two is their difference
    }
    double published = byPanels(q, means, df);
    if (df >= ENOUGH_DF) {
      return published;
    }
    double whole = ScaleMixture.mean(q, df, width -> 1 - rangeWithin(width, means));
    return Math.abs(published - whole) > MOST_MISSED_FRACTION * whole ? whole : published;
  }

  /**
   * @source copenhaver1988, eq. 2.1
   */
  private static double byPanels(double q, int means, double df) {
    double half = df <= 100 ? 1 : df <= 800 ? 0.5 : df <= 5000 ? 0.25 : 0.125;
    double constant =
        df / 2 * Math.log(df) - df * Math.log(2) - Gamma.logGamma(df / 2) + Math.log(half);
    double within = 0;
    for (int panel = 1; panel <= MOST_PANELS; panel++) {
      double sum = 0;
      for (int k = 0; k < OUTER.getNumberOfPoints(); k++) {
        double at = half * (2 * panel - 1 + OUTER.getPoint(k));
        double logDensity = constant + (df / 2 - 1) * Math.log(at) - at * df / 4;
        if (logDensity >= NOTHING) {
          double width = q * Math.sqrt(at / 2);
          sum += OUTER.getWeight(k) * Math.exp(logDensity) * rangeWithin(width, means);
        }
      }
      if (panel * half >= 1 && sum <= ENOUGH) {
        break;
      }
      within += sum;
    }
    return Math.max(0, 1 - within);
  }

  /**
   * The q that is exceeded with a given probability.
   *
   * @param beyondFraction above 0 and below 1
   */
  public static double quantile(double beyondFraction, int means, double df) {
    return Crossing.of(q -> above(q, means, df), beyondFraction);
  }

  /**
   * P(range of normals &lt;= width).
   *
   * @source copenhaver1988, eq. 2.2
   */
  private static double rangeWithin(double width, int means) {
    double middle = width / 2;
    if (middle >= END) {
      return 1;
    }
    int panels = width > 3 ? 2 : 3;
    double length = (END - middle) / panels;
    double sum = 0;
    for (int panel = 0; panel < panels; panel++) {
      double centre = middle + (panel + 0.5) * length;
      for (int k = 0; k < INNER.getNumberOfPoints(); k++) {
        double z = centre + length / 2 * INNER.getPoint(k);
        double inside = Tails.normalBelow(z) - Tails.normalBelow(z - width);
        sum += INNER.getWeight(k) * Math.exp(-z * z / 2) * Math.pow(inside, means - 1);
      }
    }
    double outer = length * means / Math.sqrt(2 * Math.PI) * sum;
    return Math.min(1, Math.pow(2 * Tails.normalBelow(middle) - 1, means) + outer);
  }
}
