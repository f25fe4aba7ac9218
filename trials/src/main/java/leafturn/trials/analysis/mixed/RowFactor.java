package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.mixed.CovarianceStructure.Slopes;
import leafturn.trials.analysis.numeric.Cholesky;
import org.jspecify.annotations.Nullable;

/** V as one dense matrix over the rows of a block: for errors correlated over time. */
final class RowFactor extends BlockFactor {
  private final Pattern pattern;
  private final CovarianceStructure structure;
  private final double[] theta;
  private final double logDeterminant;
  private final double[] inverse;

  private RowFactor(
      Pattern pattern, CovarianceStructure structure, double[] theta, double[] factor) {
    this.pattern = pattern;
    this.structure = structure;
    this.theta = theta;
    this.logDeterminant = Cholesky.logDeterminant(factor, pattern.size());
    this.inverse = Cholesky.inverse(factor, pattern.size());
  }

  /** Null where V is not positive definite. */
  static @Nullable RowFactor of(Pattern pattern, CovarianceStructure structure, double[] theta) {
    double[][] ofTimes = structure.time().covariance(structure.timeParameters(theta));
    double[] factor = pattern.covariance(structure, theta, ofTimes);
    return Cholesky.factor(factor, pattern.size())
        ? new RowFactor(pattern, structure, theta, factor)
        : null;
  }

  @Override
  double logDeterminant() {
    return logDeterminant;
  }

  @Override
  double[] solve(double[] x, int columns) {
    return product(inverse, x, pattern.size(), columns);
  }

  @Override
  void addTraces(Slopes slopes, double weight) {
    pattern.addSlopes(slopes, weight, inverse, timeDerivatives());
  }

  @Override
  double[] diagonal() {
    double[] diagonal = new double[pattern.size()];
    for (int i = 0; i < diagonal.length; i++) {
      diagonal[i] = inverse[i * diagonal.length + i];
    }
    return diagonal;
  }

  @Override
  Moves moves(double[] weighted, int directions) {
    int size = pattern.size();
    List<double[]> derivatives = derivatives();
    Moves moves = Moves.none(derivatives.size(), directions);
    List<double[]> products = new ArrayList<>();
    List<double[]> moved = new ArrayList<>();
    for (int i = 0; i < derivatives.size(); i++) {
      products.add(product(inverse, derivatives.get(i), size, size));
      moved.add(product(derivatives.get(i), weighted, size, directions));
      Moves.addCross(moves.first()[i], weighted, moved.get(i));
      for (int k = 0; k < size; k++) {
        moves.single()[i] += products.get(i)[k * size + k];
      }
    }
    for (int j = 0; j < derivatives.size(); j++) {
      double[] solved = product(inverse, moved.get(j), size, directions);
      for (int i = j; i < derivatives.size(); i++) {
        Moves.addCross(moves.second()[i][j], moved.get(i), solved);
        moves.traces()[i][j] = trace(products.get(i), products.get(j), size);
        moves.traces()[j][i] = moves.traces()[i][j];
      }
    }
    return moves;
  }

  private double[][][] timeDerivatives() {
    return structure.time().derivatives(structure.timeParameters(theta));
  }

  /** V_i of each parameter. */
  private List<double[]> derivatives() {
    List<double[]> all = new ArrayList<>();
    for (int set = 0; set < structure.effects().size(); set++) {
      for (int a = 0; a < structure.effects().get(set).size(); a++) {
        for (int b = 0; b <= a; b++) {
          all.add(pattern.gammaDerivative(set, a, b));
        }
      }
    }
    for (double[][] ofTimes : timeDerivatives()) {
      all.add(pattern.timeDerivative(ofTimes));
    }
    return all;
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
