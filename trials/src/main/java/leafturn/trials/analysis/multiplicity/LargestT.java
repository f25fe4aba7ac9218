package leafturn.trials.analysis.multiplicity;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.ScaleMixture;
import leafturn.trials.analysis.numeric.Tails;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * The largest in size of several correlated t values that share one standard error: exact where the
 * correlations are products (comparisons with a control) or powers of a distance (dates), otherwise
 * by a fixed lattice.
 */
public final class LargestT {
  private static final double STEP = 0.1;
  private static final double END = 9;
  private static final int NODES = 64;
  private static final double CHAIN = 1e-9;
  private static final double GRID = 0.2;
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
   * Dates correlated in any way: exact where each correlation is the product of those between the
   * neighbours on the way, else by the lattice on a fine grid of bounds.
   */
  public static LargestT ofDates(double[][] correlation) {
    double[] neighbours = new double[correlation.length - 1];
    Arrays.setAll(neighbours, i -> correlation[i + 1][i]);
    if (isChain(correlation)) {
      return ofDates(neighbours);
    }
    double[] loadings = Loadings.of(correlation);
    return loadings == null ? ofGrid(new NormalBox(correlation)) : ofLoadings(loadings);
  }

  private static boolean isChain(double[][] correlation) {
    for (int i = 0; i < correlation.length; i++) {
      double along = 1;
      for (int j = i + 1; j < correlation.length; j++) {
        along *= correlation[j][j - 1];
        boolean same = Math.abs(correlation[j][i] - along) < CHAIN;
        if (!same || Math.abs(correlation[j][j - 1]) > 1 - CHAIN) {
          return false;
        }
      }
    }
    return true;
  }

  private static LargestT ofGrid(DoubleUnaryOperator within) {
    int knots = (int) Math.ceil(ALL / GRID) + 1;
    double[] bounds = new double[knots];
    Arrays.setAll(bounds, i -> i * GRID);
    double[] values =
        Arrays.stream(bounds).map(b -> b == 0 ? 0 : within.applyAsDouble(b)).toArray();
    PolynomialSplineFunction smooth = new SplineInterpolator().interpolate(bounds, values);
    double end = bounds[knots - 1];
    return new LargestT(bound -> bound >= end ? 1 : smooth.value(bound));
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
