package leafturn.trials.analysis.diagnostics;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.numeric.Tails;

/**
 * What each observation differs by from what all others say of it, in its own standard errors
 * (externally studentized); for correlated observations at the fitted ratios of the variances. An
 * observation that lies apart is named and stays in the analysis.
 *
 * @param values one for each row of the frame; NaN where the others say nothing
 * @param df degrees of freedom of each
 * @param lines of the file
 * @source cook1982, eq. 2.2.8
 */
public record DeletionResiduals(double[] values, double df, List<Integer> lines) {
  private static final double APART = 0.05;

  /** The residuals of a fit. */
  public static DeletionResiduals of(MixedFit fit) {
    double[][] parts = fit.residualParts();
    double freedom = fit.residualFreedom();
    double[] values = new double[parts.length];
    for (int i = 0; i < values.length; i++) {
      double own = parts[i][1];
      double share = parts[i][0] * parts[i][0] / own;
      double rest = (freedom * fit.residualVariance() - share) / (freedom - 1);
      boolean known = own > 1e-10 && rest > 0;
      values[i] = known ? parts[i][0] / Math.sqrt(own * rest) : Double.NaN;
    }
    return new DeletionResiduals(values, freedom - 1, fit.frame().lines());
  }

  /** Bonferroni's p of one observation among all. */
  public double p(int row) {
    return Math.min(1, values.length * Tails.tBeyond(values[row], df));
  }

  /** The observations that lie apart, in words. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      if (df > 0 && p(i) < APART) {
        sentences.add(
            "Line %d lies apart (deletion residual %.3g, Bonferroni p %.2g); it stays in: see what the result is without it, and keep both."
                .formatted(lines.get(i), values[i], p(i)));
      }
    }
    return sentences;
  }
}
