package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.List;
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
  public static VarianceInformation of(MixedFit fit) {
    Sums sums = new Sums(fit);
    for (int b = 0; b < sums.patterns.size(); b++) {
      sums.add(sums.patterns.get(b), fit.state().blocks().get(b));
    }
    return sums.finished();
  }

  /** Sums over the blocks, in the scale in which the likelihood works. */
  private static final class Sums {
    private final MixedFit fit;
    private final CovarianceStructure structure;
    private final List<Pattern> patterns;
    private final double variance;
    private final int directions;
    private final int parameters;
    private final double[][][] first;
    private final double[][][][] second;
    private final double[][] traces;

    Sums(MixedFit fit) {
      this.fit = fit;
      this.structure = fit.likelihood().structure();
      this.patterns = fit.likelihood().patterns();
      this.variance = fit.scaledVariance();
      this.directions = fit.likelihood().directions();
      this.parameters = structure.parameters() + 1;
      this.first = new double[parameters][directions][directions];
      this.second = new double[parameters][parameters][directions][directions];
      this.traces = new double[parameters][parameters];
    }

    void add(Pattern pattern, RestrictedLikelihood.Block block) {
      int size = pattern.size();
      double[] inverse = scaled(block.inverse(), 1 / variance);
      double[] weighted = scaled(block.weighted(), 1 / variance);
      List<double[]> derivatives = derivatives(pattern);
      List<double[]> products = new ArrayList<>();
      List<double[]> moved = new ArrayList<>();
      for (int i = 0; i < parameters; i++) {
        products.add(product(inverse, derivatives.get(i), size, size));
        moved.add(product(derivatives.get(i), weighted, size, directions));
        addCross(first[i], -pattern.count(), weighted, moved.get(i));
      }
      for (int j = 0; j < parameters; j++) {
        double[] solved = product(inverse, moved.get(j), size, directions);
        for (int i = 0; i < parameters; i++) {
          addCross(second[i][j], pattern.count(), moved.get(i), solved);
          traces[i][j] += pattern.count() * trace(products.get(i), products.get(j), size);
        }
      }
    }

    VarianceInformation finished() {
      double scale = fit.scale() * fit.scale();
      double[][] covariance = new double[directions][directions];
      Matrices.add(covariance, variance, fit.state().covariance());
      double[][] information = new double[parameters][parameters];
      for (int i = 0; i < parameters; i++) {
        double[][] left = Matrices.product(covariance, first[i]);
        for (int j = 0; j < parameters; j++) {
          double[][] right = Matrices.product(covariance, first[j]);
          double twice =
              traces[i][j]
                  - 2 * Matrices.traceOfProduct(covariance, second[i][j])
                  + Matrices.traceOfProduct(left, right);
          information[i][j] = twice / 2;
        }
      }
      double[][] unscaled = new double[directions][directions];
      Matrices.add(unscaled, scale, covariance);
      inUnitOfResponse(1 / scale);
      return new VarianceInformation(
          unscaled, first, second, Matrices.inverseOfSymmetric(information));
    }

    private void inUnitOfResponse(double factor) {
      for (int i = 0; i < parameters; i++) {
        for (double[] row : first[i]) {
          multiply(row, factor);
        }
        for (int j = 0; j < parameters; j++) {
          for (double[] row : second[i][j]) {
            multiply(row, factor);
          }
        }
      }
    }

    private static void multiply(double[] row, double factor) {
      for (int k = 0; k < row.length; k++) {
        row[k] *= factor;
      }
    }

    /** V_i of each parameter; the last is the residual variance. */
    private List<double[]> derivatives(Pattern pattern) {
      List<double[]> all = new ArrayList<>();
      for (int set = 0; set < structure.effects().size(); set++) {
        for (int a = 0; a < structure.effects().get(set).size(); a++) {
          for (int b = 0; b <= a; b++) {
            all.add(scaled(pattern.gammaDerivative(set, a, b), variance));
          }
        }
      }
      double[] free = structure.timeParameters(fit.state().theta());
      for (double[][] ofTimes : structure.time().derivatives(free)) {
        all.add(scaled(pattern.timeDerivative(ofTimes), variance));
      }
      double[] whole =
          pattern.covariance(structure, fit.state().theta(), structure.time().covariance(free));
      all.add(mirrored(whole, pattern.size()));
      return all;
    }

    private static double[] mirrored(double[] lower, int size) {
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < i; j++) {
          lower[j * size + i] = lower[i * size + j];
        }
      }
      return lower;
    }

    private static double[] scaled(double[] values, double factor) {
      double[] scaled = new double[values.length];
      for (int i = 0; i < values.length; i++) {
        scaled[i] = values[i] * factor;
      }
      return scaled;
    }

    private static double[] product(double[] left, double[] right, int size, int columns) {
      double[] product = new double[size * columns];
      for (int i = 0; i < size; i++) {
        for (int k = 0; k < size; k++) {
          double factor = left[i * size + k];
          if (factor != 0) {
            for (int j = 0; j < columns; j++) {
              product[i * columns + j] += factor * right[k * columns + j];
            }
          }
        }
      }
      return product;
    }

    /** Adds weight times A'B. */
    private void addCross(double[][] sum, double weight, double[] a, double[] b) {
      int rows = a.length / directions;
      for (int i = 0; i < rows; i++) {
        int at = i * directions;
        for (int j = 0; j < directions; j++) {
          double factor = weight * a[at + j];
          if (factor != 0) {
            for (int k = 0; k < directions; k++) {
              sum[j][k] += factor * b[at + k];
            }
          }
        }
      }
    }

    private static double trace(double[] a, double[] b, int size) {
      double trace = 0;
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          trace += a[i * size + j] * b[j * size + i];
        }
      }
      return trace;
    }
  }
}
