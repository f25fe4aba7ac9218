package leafturn.trials.analysis.mixed;

import leafturn.trials.analysis.numeric.Matrices;

/**
 * How the covariance of the basis' coefficients moves with the variances, and how well the data
 * know the variances: what Kenward and Roger's correction is made of. The variances are the
 * elements of the random effects' covariances, the parameters of the correlation over time and the
 * residual variance; a variance at zero counts like any other.
 *
 * @param covariance Φ = (Q'V⁻¹Q)⁻¹ in the unit of the response
 * @param first P_i = -Q'V⁻¹V_iV⁻¹Q
 * @param second Q_ij = Q'V⁻¹V_iV⁻¹V_jV⁻¹Q
 * @param uncertainty W, the inverse of the expected information
 * @source kenwardroger1997, eq. 4-6
 */
public record VarianceInformation(
    double[][] covariance, double[][][] first, double[][][][] second, double[][] uncertainty) {

  /** Collects the terms of a fit. */
  static VarianceInformation of(MixedFit fit) {
    Sums sums = new Sums(fit);
    for (int b = 0; b < fit.state().solved().size(); b++) {
      Block block = fit.likelihood().blocks().get(b);
      sums.add(block.pattern(), fit.state().solved().get(b));
    }
    return sums.finished();
  }

  /**
   * Sums over the blocks: V relative to the residual variance while blocks are added, then in the
   * unit of the response. The last parameter is the residual variance s, for which V_i is V/s.
   */
  private static final class Sums {
    private final MixedFit fit;
    private final int directions;
    private final int last;
    private final double[][][] first;
    private final double[][][][] second;
    private final double[][] traces;
    private final double[][] whole;

    Sums(MixedFit fit) {
      this.fit = fit;
      this.directions = fit.likelihood().directions();
      this.last = fit.likelihood().structure().parameters();
      this.first = new double[last + 1][directions][directions];
      this.second = new double[last + 1][last + 1][directions][directions];
      this.traces = new double[last + 1][last + 1];
      this.whole = new double[directions][directions];
    }

    void add(Pattern pattern, RestrictedLikelihood.Solved solved) {
      BlockFactor.Moves moves = solved.factor().moves(solved.weighted(), directions);
      int count = pattern.count();
      double[][] own = new double[directions][directions];
      BlockFactor.Moves.addCross(own, pattern.basis(), solved.weighted());
      Matrices.add(whole, count, own);
      for (int i = 0; i < last; i++) {
        Matrices.add(first[i], -count, moves.first()[i]);
        traces[i][last] += count * moves.single()[i];
        for (int j = 0; j <= i; j++) {
          Matrices.add(second[i][j], count, moves.second()[i][j]);
          traces[i][j] += count * moves.traces()[i][j];
        }
      }
    }

    VarianceInformation finished() {
      double variance = fit.residualVariance();
      double[][] covariance = fit.basisCovariance();
      addResidual();
      double[][] information = new double[last + 1][last + 1];
      for (int i = 0; i <= last; i++) {
        Matrices.multiply(first[i], 1 / (variance * power(i, variance)));
        for (int j = 0; j <= i; j++) {
          double powers = power(i, variance) * power(j, variance);
          Matrices.multiply(second[i][j], 1 / (variance * powers));
          traces[i][j] /= powers;
          second[j][i] = Matrices.transpose(second[i][j]);
        }
      }
      for (int i = 0; i <= last; i++) {
        double[][] left = Matrices.product(covariance, first[i]);
        for (int j = 0; j <= i; j++) {
          double[][] right = Matrices.product(covariance, first[j]);
          double twice =
              traces[i][j]
                  - 2 * Matrices.traceOfProduct(covariance, second[i][j])
                  + Matrices.traceOfProduct(left, right);
          information[i][j] = twice / 2;
          information[j][i] = information[i][j];
        }
      }
      double[][] uncertainty = Matrices.inverseOfSymmetric(information);
      return new VarianceInformation(covariance, first, second, uncertainty);
    }

    /** The residual variance counts once more for each time that V stands in place of V_i. */
    private double power(int parameter, double variance) {
      return parameter == last ? variance : 1;
    }

    /** What follows from V⁻¹V = 1. */
    private void addResidual() {
      Matrices.add(first[last], -1, whole);
      Matrices.add(second[last][last], 1, whole);
      for (int i = 0; i < last; i++) {
        Matrices.add(second[last][i], -1, first[i]);
        traces[last][i] = traces[i][last];
      }
      traces[last][last] = fit.likelihood().observations();
    }
  }
}
