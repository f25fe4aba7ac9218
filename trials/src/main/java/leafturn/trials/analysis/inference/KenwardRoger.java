package leafturn.trials.analysis.inference;

import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.VarianceInformation;
import leafturn.trials.analysis.numeric.Matrices;

/**
 * Kenward and Roger's adjustment: a covariance that allows for the variances being estimated, a
 * scaled F and its degrees of freedom. Terms of the second derivative are left out, which changes
 * nothing for variances and covariances; for correlation parameters they would depend on how the
 * parameter is written.
 *
 * @source kenwardroger1997, section 3
 */
public final class KenwardRoger implements Approximation {
  private final MixedFit fit;
  private final VarianceInformation information;
  private final double[][] adjusted;

  /** Works out the adjustment of a fit. */
  public KenwardRoger(MixedFit fit) {
    this.fit = fit;
    this.information = fit.varianceInformation();
    this.adjusted = adjusted(information);
  }

  /** Φ + 2 Φ [sum of W_ij (Q_ij - P_i Φ P_j)] Φ. */
  private static double[][] adjusted(VarianceInformation of) {
    double[][] phi = of.covariance();
    int parameters = of.first().length;
    double[][] sum = new double[phi.length][phi.length];
    for (int i = 0; i < parameters; i++) {
      double[][] left = Matrices.product(of.first()[i], phi);
      for (int j = 0; j < parameters; j++) {
        double weight = of.uncertainty()[i][j];
        Matrices.add(sum, weight, of.second()[i][j]);
        Matrices.add(sum, -weight, Matrices.product(left, of.first()[j]));
      }
    }
    double[][] adjusted = Matrices.product(Matrices.product(phi, sum), phi);
    for (int i = 0; i < phi.length; i++) {
      for (int j = 0; j < phi.length; j++) {
        adjusted[i][j] = phi[i][j] + 2 * adjusted[i][j];
      }
    }
    for (int i = 0; i < phi.length; i++) {
      for (int j = 0; j < i; j++) {
        adjusted[i][j] = (adjusted[i][j] + adjusted[j][i]) / 2;
        adjusted[j][i] = adjusted[i][j];
      }
    }
    return adjusted;
  }

  @Override
  public double[][] covariance() {
    return adjusted;
  }

  /** For one function A1 and A2 are the same A, the scale is 1 and the degrees of freedom 2 / A. */
  @Override
  public double degreesOfFreedom(double[] function) {
    double[] share = Matrices.product(information.covariance(), function);
    double variance = Matrices.dot(function, share);
    double[] slopes = new double[information.first().length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = Matrices.form(share, information.first()[i], share) / variance;
    }
    return 2 / Matrices.form(slopes, information.uncertainty(), slopes);
  }

  @Override
  public FTest test(double[][] functions) {
    double q = functions.length;
    double[][] lambda = Matrices.transpose(functions);
    double[][] middle =
        Matrices.inverseOfSymmetric(
            Matrices.product(Matrices.product(functions, information.covariance()), lambda));
    double[][] theta = Matrices.product(Matrices.product(lambda, middle), functions);
    double[] a = sums(theta);
    if (functions.length == 1) {
      return ofOne(a[1], functions, lambda);
    }
    double b = (a[0] + 6 * a[1]) / (2 * q);
    double g = ((q + 1) * a[0] - (q + 4) * a[1]) / ((q + 2) * a[1]);
    double d = 3 * q + 2 * (1 - g);
    double c1 = g / d;
    double c2 = (q - g) / d;
    double c3 = (q + 2 - g) / d;
    double mean = 1 / (1 - a[1] / q);
    double variance = 2 / q * (1 + c1 * b) / ((1 - c2 * b) * (1 - c2 * b) * (1 - c3 * b));
    double rho = variance / (2 * mean * mean);
    double m = 4 + (q + 2) / (q * rho - 1);
    double scale = Math.abs(m - 2) < 1e-10 ? 1 : m / (mean * (m - 2));
    return new FTest(q, m, scale * wald(functions, lambda) / q);
  }

  /**
   * A single function: A1 is A2, so that the formulas come to m = 2 / A2 and a scale of 1; as they
   * are written they divide zero by zero at m = 2.
   */
  private FTest ofOne(double a2, double[][] functions, double[][] lambda) {
    return new FTest(1, 2 / a2, wald(functions, lambda));
  }

  private double wald(double[][] functions, double[][] lambda) {
    double[][] inverse =
        Matrices.inverseOfSymmetric(
            Matrices.product(Matrices.product(functions, adjusted), lambda));
    double[] values = fit.values(functions);
    return Matrices.form(values, inverse, values);
  }

  /** A1 and A2. */
  private double[] sums(double[][] theta) {
    int parameters = information.first().length;
    double[][] phi = information.covariance();
    double[][] left = Matrices.product(theta, phi);
    double[][][] parts = new double[parameters][][];
    double[] traces = new double[parameters];
    for (int i = 0; i < parameters; i++) {
      parts[i] = Matrices.product(Matrices.product(left, information.first()[i]), phi);
      for (int k = 0; k < phi.length; k++) {
        traces[i] += parts[i][k][k];
      }
    }
    double a1 = 0;
    double a2 = 0;
    for (int i = 0; i < parameters; i++) {
      for (int j = 0; j < parameters; j++) {
        double weight = information.uncertainty()[i][j];
        a1 += weight * traces[i] * traces[j];
        a2 += weight * Matrices.traceOfProduct(parts[i], parts[j]);
      }
    }
    return new double[] {a1, a2};
  }
}
