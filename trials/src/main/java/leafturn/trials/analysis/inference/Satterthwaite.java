package leafturn.trials.analysis.inference;

import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.VarianceUncertainty;
import leafturn.trials.analysis.numeric.Matrices;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/**
 * Satterthwaite's degrees of freedom: those of the chi squared whose variance is that of the
 * estimate's variance. Several functions at once are turned into independent ones.
 *
 * @source faicornelius1996, section 2
 */
public final class Satterthwaite implements Approximation {
  private final MixedFit fit;
  private final double[][] covariance;
  private final VarianceUncertainty uncertainty;

  /** Works out the uncertainty of a fit's variances. */
  public Satterthwaite(MixedFit fit) {
    this.fit = fit;
    this.covariance = fit.basisCovariance();
    this.uncertainty = new VarianceUncertainty(fit);
  }

  @Override
  public double[][] covariance() {
    return covariance;
  }

  @Override
  public double degreesOfFreedom(double[] function) {
    return uncertainty.degreesOfFreedom(function);
  }

  @Override
  public FTest test(double[][] functions) {
    int q = functions.length;
    double[][] spread =
        Matrices.product(Matrices.product(functions, covariance), Matrices.transpose(functions));
    EigenDecompositionSymmetric eigen = Matrices.eigen(spread);
    double f = 0;
    double expected = 0;
    double lowest = Double.POSITIVE_INFINITY;
    double highest = 0;
    for (int k = 0; k < q; k++) {
      double[] weights = eigen.getEigenvector(k).toArray();
      double[] function = Matrices.product(Matrices.transpose(functions), weights);
      double value = fit.value(function);
      f += value * value / eigen.getEigenvalue(k) / q;
      double df = degreesOfFreedom(function);
      lowest = Math.min(lowest, df);
      highest = Math.max(highest, df);
      expected += df > 2 ? df / (df - 2) : 0;
    }
    boolean equal = highest - lowest < 1e-8 * highest;
    double df = equal ? lowest : 2 * expected / (expected - q);
    return new FTest(q, q == 1 || expected > q ? df : 0, f);
  }
}
