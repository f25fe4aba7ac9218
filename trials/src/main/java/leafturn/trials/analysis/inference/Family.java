package leafturn.trials.analysis.inference;

import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.model.Comparison.Multiplicity;
import leafturn.trials.analysis.multiplicity.AdjustedP;
import leafturn.trials.analysis.multiplicity.LargestT;
import leafturn.trials.analysis.multiplicity.StudentizedRange;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.Tails;
import org.jspecify.annotations.Nullable;

/**
 * Comparisons that are judged together, and what their number does to p values and intervals.
 * Intervals of the stepwise methods (Holm, Hommel, Benjamini and Hochberg) are Bonferroni's, since
 * the steps themselves give none.
 */
final class Family {
  private final Multiplicity multiplicity;
  private final int means;
  private final double[] t;
  private final double[] df;
  private final double[] p;
  private final LargestT largest;
  private double @Nullable [] adjusted;

  /**
   * @param means how many means are compared
   * @param functions of the comparisons
   */
  Family(
      Multiplicity multiplicity,
      int means,
      List<double[]> functions,
      List<Estimate> estimates,
      double[][] covariance) {
    this.multiplicity = multiplicity;
    this.means = means;
    this.t = estimates.stream().mapToDouble(Estimate::t).toArray();
    this.df = estimates.stream().mapToDouble(Estimate::df).toArray();
    this.p = estimates.stream().mapToDouble(Estimate::p).toArray();
    this.largest =
        multiplicity == Multiplicity.DUNNETT && !functions.isEmpty()
            ? LargestT.of(correlation(functions, covariance))
            : LargestT.ofLoadings(new double[] {0});
  }

  private static double[][] correlation(List<double[]> functions, double[][] covariance) {
    double[][] rows = functions.toArray(double[][]::new);
    double[][] correlation =
        Matrices.product(Matrices.product(rows, covariance), Matrices.transpose(rows));
    double[] sizes = new double[rows.length];
    Arrays.setAll(sizes, i -> Math.sqrt(correlation[i][i]));
    for (int i = 0; i < sizes.length; i++) {
      for (int j = 0; j < sizes.length; j++) {
        correlation[i][j] = i == j ? 1 : correlation[i][j] / (sizes[i] * sizes[j]);
      }
    }
    return correlation;
  }

  /** The adjusted p value of a comparison. */
  double adjusted(int comparison) {
    if (adjusted == null) {
      adjusted = adjusted();
    }
    return adjusted[comparison];
  }

  private double[] adjusted() {
    if (Arrays.stream(p).anyMatch(Double::isNaN)) {
      return p;
    }
    double[] each = new double[p.length];
    return switch (multiplicity) {
      case NONE -> p;
      case SIDAK -> AdjustedP.sidak(p);
      case HOLM -> AdjustedP.holm(p);
      case HOMMEL -> AdjustedP.hommel(p);
      case BONFERRONI -> AdjustedP.bonferroni(p);
      case BENJAMINI_HOCHBERG -> AdjustedP.benjaminiHochberg(p);
      case TUKEY -> {
        Arrays.setAll(
            each, i -> StudentizedRange.above(Math.abs(t[i]) * Math.sqrt(2), means, df[i]));
        yield each;
      }
      case DUNNETT -> {
        Arrays.setAll(each, i -> largest.above(Math.abs(t[i]), df[i]));
        yield each;
      }
    };
  }

  /** How many standard errors the interval of a comparison reaches to either side. */
  double reach(int comparison, double levelFraction) {
    double beyond = 1 - levelFraction;
    double freedom = df[comparison];
    if (!(freedom > 0)) {
      return Double.NaN;
    }
    return switch (multiplicity) {
      case NONE -> Tails.tQuantileTwoSided(beyond, freedom);
      case SIDAK -> Tails.tQuantileTwoSided(-Math.expm1(Math.log1p(-beyond) / p.length), freedom);
      case BONFERRONI, HOLM, HOMMEL, BENJAMINI_HOCHBERG ->
          Tails.tQuantileTwoSided(beyond / p.length, freedom);
      case TUKEY -> StudentizedRange.quantile(beyond, means, freedom) / Math.sqrt(2);
      case DUNNETT -> largest.quantile(beyond, freedom);
    };
  }
}
