package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.mixed.CovarianceStructure.Slopes;
import leafturn.trials.analysis.numeric.Cholesky;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.NewtonMinimum;
import org.jspecify.annotations.Nullable;

/**
 * Minus twice the restricted log likelihood, the residual variance s2 at its best value:
 *
 * <pre>(n - p) log s2 + log |V| + log |Q'V⁻¹Q|,   s2 = r'V⁻¹r / (n - p)</pre>
 *
 * with Q an orthonormal basis of the fixed part and r what its best coefficients leave. V falls
 * apart into independent blocks, and blocks of the same design share one factor.
 *
 * @source pattersonthompson1971, eq. 7; harville1977, section 4
 */
final class RestrictedLikelihood implements NewtonMinimum.Function {
  private final CovarianceStructure structure;
  private final List<Pattern> patterns;
  private final double[] observed;
  private final int directions;
  private final int freedom;

  /**
   * @param observed the observations less what least squares explains
   * @param directions rank of the fixed part
   */
  RestrictedLikelihood(
      CovarianceStructure structure, List<Pattern> patterns, double[] observed, int directions) {
    this.structure = structure;
    this.patterns = patterns;
    this.observed = observed;
    this.directions = directions;
    this.freedom = observed.length - directions;
  }

  CovarianceStructure structure() {
    return structure;
  }

  List<Pattern> patterns() {
    return patterns;
  }

  int directions() {
    return directions;
  }

  /** Observations less coefficients. */
  int freedom() {
    return freedom;
  }

  /** The factors of one block's covariance. */
  record Block(double[] inverse, double[] weighted) {}

  /**
   * All that the likelihood knows at one point.
   *
   * @param blocks V⁻¹ and V⁻¹Q of each pattern
   * @param covariance of the basis' coefficients, relative to the residual variance
   * @param coefficients of the basis, beyond those of least squares
   * @param squares r'V⁻¹r
   * @param logDeterminants log |V| + log |Q'V⁻¹Q|
   * @param traces slopes of the determinants
   * @param falls slopes of r'V⁻¹r, with the sign turned
   */
  record State(
      double[] theta,
      List<Block> blocks,
      double[][] covariance,
      double[] coefficients,
      double squares,
      double logDeterminants,
      Slopes traces,
      Slopes falls) {}

  @Override
  public NewtonMinimum.Point at(double[] theta) {
    State state = state(theta);
    if (state == null) {
      return new NewtonMinimum.Point(theta, Double.POSITIVE_INFINITY, new double[theta.length]);
    }
    double variance = state.squares / freedom;
    double value = freedom * Math.log(variance) + state.logDeterminants;
    return new NewtonMinimum.Point(theta, value, gradient(state, variance));
  }

  /** The slopes at a given residual variance. */
  double[] gradient(State state, double variance) {
    double[] traces = structure.chain(state.theta, state.traces);
    double[] falls = structure.chain(state.theta, state.falls);
    for (int i = 0; i < traces.length; i++) {
      traces[i] -= falls[i] / variance;
    }
    return traces;
  }

  /** Works through all blocks; null where V is not positive definite. */
  @Nullable State state(double[] theta) {
    double[] free = structure.timeParameters(theta);
    double[][] timeCovariance = structure.time().covariance(free);
    List<Block> blocks = new ArrayList<>();
    double[] information = new double[directions * directions];
    double logDeterminant = 0;
    for (Pattern pattern : patterns) {
      double[] factor = pattern.covariance(structure, theta, timeCovariance);
      if (!Cholesky.factor(factor, pattern.size())) {
        return null;
      }
      logDeterminant += pattern.count() * Cholesky.logDeterminant(factor, pattern.size());
      double[] inverse = Cholesky.inverse(factor, pattern.size());
      Block block = new Block(inverse, weighted(inverse, pattern));
      addInformation(information, pattern, block);
      blocks.add(block);
    }
    if (!Cholesky.factor(information, directions)) {
      return null;
    }
    logDeterminant += Cholesky.logDeterminant(information, directions);
    double[] covariance = Cholesky.inverse(information, directions);
    return completed(theta, blocks, square(covariance), logDeterminant);
  }

  private State completed(
      double[] theta, List<Block> blocks, double[][] covariance, double logDeterminants) {
    double[] coefficients = Matrices.product(covariance, moments(blocks));
    double[][][] derivatives = structure.time().derivatives(structure.timeParameters(theta));
    Slopes traces = Slopes.none(structure);
    Slopes falls = Slopes.none(structure);
    double squares = 0;
    for (int b = 0; b < blocks.size(); b++) {
      Pattern pattern = patterns.get(b);
      Block block = blocks.get(b);
      double[] projected = projected(pattern, block, covariance);
      pattern.addSlopes(traces, pattern.count(), projected, derivatives);
      double[] outer = new double[pattern.size() * pattern.size()];
      for (int[] member : pattern.members()) {
        double[] rest = rest(member, pattern, coefficients);
        double[] solved = product(block.inverse, rest);
        squares += Matrices.dot(rest, solved);
        addOuter(outer, solved);
      }
      pattern.addSlopes(falls, 1, outer, derivatives);
    }
    return new State(
        theta, blocks, covariance, coefficients, squares, logDeterminants, traces, falls);
  }

  /** V⁻¹r and the diagonal of the projection, for each observation. */
  double[][] residualParts(State state) {
    double[][] parts = new double[observed.length][2];
    for (int b = 0; b < patterns.size(); b++) {
      Pattern pattern = patterns.get(b);
      double[] projected = projected(pattern, state.blocks.get(b), state.covariance);
      for (int[] member : pattern.members()) {
        double[] rest = rest(member, pattern, state.coefficients);
        double[] solved = product(state.blocks.get(b).inverse, rest);
        for (int i = 0; i < member.length; i++) {
          parts[member[i]][0] = solved[i];
          parts[member[i]][1] = projected[i * member.length + i];
        }
      }
    }
    return parts;
  }

  /** V⁻¹Q of a block, row by row. */
  private double[] weighted(double[] inverse, Pattern pattern) {
    int size = pattern.size();
    double[] weighted = new double[size * directions];
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < size; k++) {
        double weight = inverse[i * size + k];
        if (weight != 0) {
          int from = k * directions;
          int to = i * directions;
          for (int j = 0; j < directions; j++) {
            weighted[to + j] += weight * pattern.basis()[from + j];
          }
        }
      }
    }
    return weighted;
  }

  private void addInformation(double[] information, Pattern pattern, Block block) {
    double[] basis = pattern.basis();
    for (int i = 0; i < pattern.size(); i++) {
      int at = i * directions;
      for (int j = 0; j < directions; j++) {
        double left = pattern.count() * basis[at + j];
        for (int k = 0; k <= j; k++) {
          information[j * directions + k] += left * block.weighted[at + k];
        }
      }
    }
  }

  /** Q'V⁻¹y. */
  private double[] moments(List<Block> blocks) {
    double[] moments = new double[directions];
    for (int b = 0; b < blocks.size(); b++) {
      double[] weighted = blocks.get(b).weighted;
      for (int[] member : patterns.get(b).members()) {
        for (int i = 0; i < member.length; i++) {
          double value = observed[member[i]];
          for (int j = 0; j < directions; j++) {
            moments[j] += weighted[i * directions + j] * value;
          }
        }
      }
    }
    return moments;
  }

  private double[] rest(int[] member, Pattern pattern, double[] coefficients) {
    double[] rest = new double[member.length];
    for (int i = 0; i < member.length; i++) {
      double explained = 0;
      for (int j = 0; j < directions; j++) {
        explained += pattern.basis()[i * directions + j] * coefficients[j];
      }
      rest[i] = observed[member[i]] - explained;
    }
    return rest;
  }

  /** V⁻¹ - V⁻¹Q (Q'V⁻¹Q)⁻¹ Q'V⁻¹ within a block. */
  private double[] projected(Pattern pattern, Block block, double[][] covariance) {
    int size = pattern.size();
    double[] projected = block.inverse.clone();
    double[] row = new double[directions];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < directions; j++) {
        row[j] = 0;
        for (int k = 0; k < directions; k++) {
          row[j] += block.weighted[i * directions + k] * covariance[k][j];
        }
      }
      for (int l = 0; l < size; l++) {
        double sum = 0;
        for (int j = 0; j < directions; j++) {
          sum += row[j] * block.weighted[l * directions + j];
        }
        projected[i * size + l] -= sum;
      }
    }
    return projected;
  }

  private static double[] product(double[] matrix, double[] vector) {
    int size = vector.length;
    double[] product = new double[size];
    for (int i = 0; i < size; i++) {
      double sum = 0;
      for (int j = 0; j < size; j++) {
        sum += matrix[i * size + j] * vector[j];
      }
      product[i] = sum;
    }
    return product;
  }

  private static void addOuter(double[] sum, double[] vector) {
    int size = vector.length;
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        sum[i * size + j] += vector[i] * vector[j];
      }
    }
  }

  private double[][] square(double[] flat) {
    double[][] square = new double[directions][directions];
    for (int i = 0; i < directions; i++) {
      System.arraycopy(flat, i * directions, square[i], 0, directions);
    }
    return square;
  }
}
