package leafturn.trials.analysis.multiplicity;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The largest in size of several correlated t values that share one standard error: exact where the
 * correlations are products (comparisons with a control) or powers of a distance (dates), otherwise
 * by a fixed lattice.
 */
public final class LargestT {
  private static final double STEP = 0.1;
  private static final double END = 9;
  private static final int NODES = 64;
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(NODES);

  /** No normal is this large. */
  private static final double ALL = 8.5;

  /** P(largest normal &lt;= c). */
  private final DoubleUnaryOperator normalsWithin;

  private LargestT(DoubleUnaryOperator normalsWithin) {
    this.normalsWithin = normalsWithin;
  }

  /** The distribution for a correlation matrix, by the exact way if there is one. */
  public static LargestT of(double[][] correlation) {
    double[] loadings = Loadings.of(correlation);
    return loadings == null ? new LargestT(new NormalBox(correlation)) : ofLoadings(loadings);
  }

  /**
   * Correlations that are products of loadings, as those of differences from one control.
   *
   * @param loadings between -1 and 1
   * @source dunnett1955, section 4
   */
  public static LargestT ofLoadings(double[] loadings) {
    return new LargestT(bound -> factorWithin(bound, loadings));
  }

  /**
   * Dates whose correlation is the product of those between neighbours.
   *
   * @param neighbours correlation of each date with the one before, one fewer than dates
   * @source genzbretz2009, section 2.2
   */
  public static LargestT ofDates(double[] neighbours) {
    return new LargestT(bound -> chainWithin(bound, neighbours));
  }

  /**
   * P(largest |t| &gt; t).
   *
   * @param df of the standard error, may be a fraction or infinite
   */
  public double above(double t, double df) {
    if (!(t > 0)) {
      return 1;
    }
    double above = ScaleMixture.mean(t, df, bound -> 1 - normalsWithin.applyAsDouble(bound));
    return Math.max(0, Math.min(1, above));
  }

  /** The t that the largest exceeds with a given probability. */
  public double quantile(double beyondFraction, double df) {
    return Crossing.of(t -> above(t, df), beyondFraction);
  }

  private static double factorWithin(double bound, double[] loadings) {
    double sum = 0;
    for (double z = -END; z <= END; z += STEP) {
      double product = Math.exp(-z * z / 2);
      for (double loading : loadings) {
        double spread = Math.sqrt(Math.max(0, 1 - loading * loading));
        product *= within(bound, loading * z, spread);
      }
      sum += product;
    }
    return sum * STEP / Math.sqrt(2 * Math.PI);
  }

  private static double within(double bound, double mean, double spread) {
    if (spread < 1e-9) {
      return Math.abs(mean) <= bound ? 1 : 0;
    }
    return Tails.normalBelow((bound - mean) / spread) - Tails.normalBelow((-bound - mean) / spread);
  }

  private static double chainWithin(double bound, double[] neighbours) {
    if (bound > ALL) {
      return 1;
    }
    double[] rest = new double[NODES];
    Arrays.fill(rest, 1);
    double[][] kernel = new double[0][];
    for (int date = neighbours.length - 1; date >= 0; date--) {
      if (date == neighbours.length - 1 || neighbours[date] != neighbours[date + 1]) {
        kernel = kernel(bound, neighbours[date]);
      }
      rest = Matrices.product(kernel, rest);
    }
    double within = 0;
    for (int i = 0; i < NODES; i++) {
      within += bound * RULE.getWeight(i) * density(bound * RULE.getPoint(i)) * rest[i];
    }
    return within;
  }

  /** From one date to the next: density at each node times its weight. */
  private static double[][] kernel(double bound, double correlation) {
    double spread = Math.sqrt(1 - correlation * correlation);
    double[][] kernel = new double[NODES][NODES];
    for (int i = 0; i < NODES; i++) {
      double mean = correlation * bound * RULE.getPoint(i);
      for (int j = 0; j < NODES; j++) {
        double z = (bound * RULE.getPoint(j) - mean) / spread;
        kernel[i][j] = bound * RULE.getWeight(j) * density(z) / spread;
      }
    }
    return kernel;
  }

  private static double density(double z) {
    return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }
}
