package leafturn.trials.analysis.mixed;

import leafturn.trials.analysis.mixed.CovarianceStructure.Slopes;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.NewtonMinimum;

/**
 * How uncertain the covariance parameters are, from the curvature of the likelihood, and how the
 * variance of an estimate moves with them: what Satterthwaite's degrees of freedom are made of. A
 * variance at zero moves nothing here.
 *
 * @source faicornelius1996, section 2
 */
public final class VarianceUncertainty {
  private final MixedFit fit;
  private final double[][] covariance;

  /** Takes the curvature at the fit, by differences of the exact gradient. */
  public VarianceUncertainty(MixedFit fit) {
    this.fit = fit;
    this.covariance = Matrices.inverseOfSymmetric(halfHessian(fit));
  }

  /**
   * The variance of one estimate and its own uncertainty.
   *
   * @param function weights of the basis' coefficients
   * @return degrees of freedom, 2 v² / var(v)
   */
  public double degreesOfFreedom(double[] function) {
    double[] slopes = slopes(function);
    double variance =
        fit.scaledVariance() * Matrices.form(function, fit.state().covariance(), function);
    return 2 * variance * variance / Matrices.form(slopes, covariance, slopes);
  }

  /** Slopes of the variance of an estimate: covariance parameters, then the residual variance. */
  private double[] slopes(double[] function) {
    RestrictedLikelihood likelihood = fit.likelihood();
    CovarianceStructure structure = likelihood.structure();
    RestrictedLikelihood.State state = fit.state();
    double[] share = Matrices.product(state.covariance(), function);
    double[][][] derivatives =
        structure.time().derivatives(structure.timeParameters(state.theta()));
    Slopes slopes = Slopes.none(structure);
    for (int b = 0; b < state.solved().size(); b++) {
      Pattern pattern = likelihood.blocks().get(b).pattern();
      double[] weights = weights(state.solved().get(b).weighted(), share);
      pattern.addForms(slopes, pattern.count(), weights, 1, derivatives);
    }
    double[] chained = structure.chain(state.theta(), slopes);
    double[] all = new double[chained.length + 1];
    for (int i = 0; i < chained.length; i++) {
      all[i] = fit.scaledVariance() * chained[i];
    }
    all[chained.length] = Matrices.dot(function, share);
    return all;
  }

  private static double[] weights(double[] weighted, double[] share) {
    double[] weights = new double[weighted.length / share.length];
    for (int i = 0; i < weights.length; i++) {
      for (int j = 0; j < share.length; j++) {
        weights[i] += weighted[i * share.length + j] * share[j];
      }
    }
    return weights;
  }

  /** Half the Hessian of minus twice the log likelihood, whose inverse is the covariance. */
  private static double[][] halfHessian(MixedFit fit) {
    RestrictedLikelihood likelihood = fit.likelihood();
    double variance = fit.scaledVariance();
    int count = likelihood.structure().parameters();
    double[][] half = new double[count + 1][count + 1];
    double[] falls = likelihood.structure().chain(fit.state().theta(), fit.state().falls());
    double freedom = likelihood.freedom();
    half[count][count] = freedom / (2 * variance * variance);
    NewtonMinimum.Function fixedVariance = theta -> pointAt(likelihood, theta, variance);
    double[] theta = fit.state().theta();
    double[][] hessian = NewtonMinimum.hessian(fixedVariance.at(theta), fixedVariance, 3e-5);
    for (int i = 0; i < count; i++) {
      half[i][count] = falls[i] / (2 * variance * variance);
      half[count][i] = half[i][count];
      for (int j = 0; j < count; j++) {
        half[i][j] = hessian[i][j] / 2;
      }
    }
    return half;
  }

  private static NewtonMinimum.Point pointAt(
      RestrictedLikelihood likelihood, double[] theta, double variance) {
    RestrictedLikelihood.State state = likelihood.state(theta);
    if (state == null) {
      return new NewtonMinimum.Point(theta, Double.POSITIVE_INFINITY, new double[theta.length]);
    }
    double value =
        likelihood.freedom() * Math.log(variance)
            + state.logDeterminants()
            + state.squares() / variance;
    return new NewtonMinimum.Point(theta, value, likelihood.gradient(state, variance));
  }
}
