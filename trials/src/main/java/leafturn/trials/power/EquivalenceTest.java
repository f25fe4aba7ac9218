package leafturn.trials.power;

import leafturn.trials.analysis.numeric.ScaleMixture;
import leafturn.trials.analysis.numeric.Tails;

/**
 * Two one-sided tests that a difference is smaller than a margin, and their power.
 *
 * @param alpha of each test, above 0 and below 0.5
 */
public record EquivalenceTest(double alpha) {
  private static final double FURTHEST = 1e6;

  public EquivalenceTest {
    if (!(alpha > 0 && alpha < 0.5)) {
      throw new IllegalArgumentException("alpha is " + alpha + ", but must lie between 0 and 0.5");
    }
  }

  /**
   * The chance to show equivalence, exactly: the mean of Φ((Δ−θ)/se − t s) − Φ(−(Δ+θ)/se + t s)
   * over s, the root of a chi squared over its degrees of freedom, up to s = Δ/(se t).
   *
   * @param margin Δ in standard errors of the difference, above 0
   * @param difference θ, the true difference in its standard errors
   * @param df above 0
   * @source schuirmann1987, section 3
   */
  public double power(double margin, double difference, double df) {
    return power(margin, difference, df, criticalT(df));
  }

  private double criticalT(double df) {
    return Tails.tQuantileTwoSided(2 * alpha, df);
  }

  private static double power(double margin, double difference, double df, double t) {
    double power =
        ScaleMixture.meanBelow(
            df,
            margin / t,
            t,
            scale ->
                Tails.normalBelow(margin - difference - t * scale)
                    - Tails.normalBelow(t * scale - margin - difference));
    return Math.max(0, Math.min(1, power));
  }

  /**
   * The smallest margin, in standard errors, that is shown with a power.
   *
   * @param power above 0 and below 1
   * @param difference the true difference in its standard errors
   * @param df above 0
   * @source schuirmann1987, section 3
   */
  public double smallestMargin(double power, double difference, double df) {
    double size = Math.abs(difference);
    double t = criticalT(df);
    return Search.rising(margin -> power(margin, size, df, t) - power, size, FURTHEST);
  }
}
