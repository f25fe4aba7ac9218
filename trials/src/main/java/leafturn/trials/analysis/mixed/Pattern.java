package leafturn.trials.analysis.mixed;

import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.mixed.CovarianceStructure.Slopes;
import leafturn.trials.analysis.numeric.Matrices;

/**
 * Observations that are correlated with each other and with no others, a yard for instance. Blocks
 * with the same design have the same covariance and are worked on together.
 *
 * @param size observations in a block
 * @param basis rows of the fixed part, one after the other
 * @param groups {@code [set][row]}, numbered within the block
 * @param columns {@code [set][effect][row]}
 * @param units the unit over time of each row, numbered within the block
 * @param positions of the rows in time
 * @param members the rows of each block with this design, in the same order
 */
record Pattern(
    int size,
    double[] basis,
    int[][] groups,
    double[][][] columns,
    int[] units,
    int[] positions,
    List<int[]> members) {

  int count() {
    return members.size();
  }

  /** V of one block, relative to the residual variance, row by row. */
  double[] covariance(CovarianceStructure structure, double[] theta, double[][] timeCovariance) {
    double[] v = new double[size * size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        if (units[i] == units[j]) {
          v[i * size + j] = timeCovariance[positions[i]][positions[j]];
        }
      }
    }
    for (int set = 0; set < groups.length; set++) {
      addEffects(v, set, structure.gamma(theta, set));
    }
    return v;
  }

  private void addEffects(double[] v, int set, double[][] gamma) {
    int[] group = groups[set];
    double[][] column = columns[set];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        if (group[i] == group[j]) {
          v[i * size + j] += product(column, gamma, i, j);
        }
      }
    }
  }

  private static double product(double[][] column, double[][] gamma, int i, int j) {
    double sum = 0;
    for (int a = 0; a < gamma.length; a++) {
      for (int b = 0; b < gamma.length; b++) {
        sum += column[a][i] * gamma[a][b] * column[b][j];
      }
    }
    return sum;
  }

  /**
   * Adds the slopes of the trace of K V for a symmetric K.
   *
   * @param weight what the slopes are multiplied with
   * @param k K, row by row
   */
  void addSlopes(Slopes slopes, double weight, double[] k, double[][][] timeDerivatives) {
    for (int set = 0; set < groups.length; set++) {
      addGammaSlopes(slopes.gamma()[set], set, weight, k);
    }
    for (int p = 0; p < timeDerivatives.length; p++) {
      double[][] derivative = timeDerivatives[p];
      double sum = 0;
      for (int i = 0; i < size; i++) {
        double[] row = derivative[positions[i]];
        for (int j = 0; j < size; j++) {
          if (units[i] == units[j]) {
            sum += k[i * size + j] * row[positions[j]];
          }
        }
      }
      slopes.time()[p] += weight * sum;
    }
  }

  /**
   * Adds the slopes of the sum of x'V x over several vectors x.
   *
   * @param weight what the slopes are multiplied with
   * @param x {@code [row * columns + column]}
   */
  void addForms(
      Slopes slopes, double weight, double[] x, int columns, double[][][] timeDerivatives) {
    for (int set = 0; set < groups.length; set++) {
      addGammaForms(slopes.gamma()[set], set, weight, x, columns);
    }
    if (timeDerivatives.length == 0) {
      return;
    }
    double[][] between = new double[timeDerivatives[0].length][timeDerivatives[0].length];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        if (units[i] == units[j]) {
          double sum = 0;
          for (int k = 0; k < columns; k++) {
            sum += x[i * columns + k] * x[j * columns + k];
          }
          between[positions[i]][positions[j]] += sum;
        }
      }
    }
    for (int p = 0; p < timeDerivatives.length; p++) {
      slopes.time()[p] += weight * Matrices.traceOfProduct(timeDerivatives[p], between);
    }
  }

  private void addGammaForms(double[][] slopes, int set, double weight, double[] x, int columns) {
    int effects = slopes.length;
    double[] sums = sums(set, x, columns);
    for (int at = 0; at < sums.length; at += effects * columns) {
      for (int a = 0; a < effects; a++) {
        for (int b = 0; b <= a; b++) {
          double sum = 0;
          for (int k = 0; k < columns; k++) {
            sum += sums[at + a * columns + k] * sums[at + b * columns + k];
          }
          slopes[a][b] += weight * sum;
          slopes[b][a] += a == b ? 0 : weight * sum;
        }
      }
    }
  }

  /** Z'x of one set, {@code [(group * effects + effect) * columns + column]}. */
  double[] sums(int set, double[] x, int columns) {
    int effects = this.columns[set].length;
    int most = Arrays.stream(groups[set]).max().orElse(-1) + 1;
    double[] sums = new double[most * effects * columns];
    for (int a = 0; a < effects; a++) {
      double[] factors = this.columns[set][a];
      for (int i = 0; i < size; i++) {
        int to = (groups[set][i] * effects + a) * columns;
        for (int k = 0; k < columns; k++) {
          sums[to + k] += factors[i] * x[i * columns + k];
        }
      }
    }
    return sums;
  }

  private void addGammaSlopes(double[][] slopes, int set, double weight, double[] k) {
    int[] group = groups[set];
    double[][] column = columns[set];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        if (group[i] == group[j]) {
          double weighted = weight * k[i * size + j];
          for (int a = 0; a < column.length; a++) {
            for (int b = 0; b < column.length; b++) {
              slopes[a][b] += weighted * column[a][i] * column[b][j];
            }
          }
        }
      }
    }
  }

  /** The change of V with one element of the covariance of a set's effects. */
  double[] gammaDerivative(int set, int a, int b) {
    double[] derivative = new double[size * size];
    double[][] column = columns[set];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        if (groups[set][i] == groups[set][j]) {
          double value = column[a][i] * column[b][j];
          derivative[i * size + j] = a == b ? value : value + column[b][i] * column[a][j];
        }
      }
    }
    return derivative;
  }

  /** The change of V with one parameter of the correlation over time. */
  double[] timeDerivative(double[][] ofTimes) {
    double[] derivative = new double[size * size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        if (units[i] == units[j]) {
          derivative[i * size + j] = ofTimes[positions[i]][positions[j]];
        }
      }
    }
    return derivative;
  }
}
