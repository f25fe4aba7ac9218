package leafturn.trials.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.numeric.Matrices;

/**
 * The average of the observed and the expected information of the parameters of random effects,
 * which needs no traces: what each parameter does to the fitted observations, weighed by V⁻¹. It is
 * near the Hessian of minus twice the restricted likelihood where its slopes are small.
 *
 * @source gilmour1995
 */
final class AverageInformation {
  private final RestrictedLikelihood likelihood;
  private final RestrictedLikelihood.State state;
  private final int parameters;

  AverageInformation(RestrictedLikelihood likelihood, RestrictedLikelihood.State state) {
    this.likelihood = likelihood;
    this.state = state;
    this.parameters = likelihood.structure().parameters();
  }

  /** The information at the best residual variance. */
  double[][] matrix() {
    double[][] forms = new double[parameters][parameters];
    double[][] onBasis = new double[parameters][likelihood.directions()];
    for (int b = 0; b < likelihood.blocks().size(); b++) {
      addBlock(forms, onBasis, b);
    }
    double variance = state.squares() / likelihood.freedom();
    double[] falls = likelihood.structure().chain(state.theta(), state.falls());
    double[][] matrix = new double[parameters][parameters];
    for (int i = 0; i < parameters; i++) {
      for (int j = 0; j < parameters; j++) {
        double form = forms[i][j] - Matrices.form(onBasis[i], state.covariance(), onBasis[j]);
        matrix[i][j] =
            form / variance - falls[i] * falls[j] / (likelihood.freedom() * variance * variance);
      }
    }
    for (int set = 0; set < likelihood.structure().effects().size(); set++) {
      addBend(matrix, set, variance);
    }
    return matrix;
  }

  /**
   * What the slopes with the covariance L L' add because it is a square: 2 M for each column of L.
   * Near a variance of zero nothing else is left.
   */
  private void addBend(double[][] matrix, int set, double variance) {
    double[][] traces = state.traces().gamma()[set];
    double[][] falls = state.falls().gamma()[set];
    int offset = likelihood.structure().offset(set);
    for (int i = 0; i < traces.length; i++) {
      for (int k = 0; k < traces.length; k++) {
        double bend = 2 * (traces[i][k] - falls[i][k] / variance);
        for (int column = 0; column <= Math.min(i, k); column++) {
          int one = offset + CovarianceStructure.entries(i) + column;
          int other = offset + CovarianceStructure.entries(k) + column;
          matrix[one][other] += bend;
        }
      }
    }
  }

  private void addBlock(double[][] forms, double[][] onBasis, int b) {
    Pattern pattern = likelihood.blocks().get(b).pattern();
    RestrictedLikelihood.Solved solved = state.solved().get(b);
    List<double[]> moved = new ArrayList<>();
    List<double[]> weighted = new ArrayList<>();
    for (int i = 0; i < parameters; i++) {
      moved.add(moved(pattern, solved.rest(), i));
      weighted.add(solved.factor().solve(moved.get(i), pattern.count()));
      addOnBasis(onBasis[i], solved.weighted(), moved.get(i), pattern.count());
      for (int j = 0; j <= i; j++) {
        double form = Matrices.dot(moved.get(j), weighted.get(i));
        forms[i][j] += form;
        forms[j][i] += i == j ? 0 : form;
      }
    }
  }

  private static void addOnBasis(double[] sum, double[] weighted, double[] moved, int members) {
    int directions = sum.length;
    int rows = moved.length / members;
    for (int i = 0; i < rows; i++) {
      double ofRow = Arrays.stream(moved, i * members, (i + 1) * members).sum();
      for (int k = 0; k < directions; k++) {
        sum[k] += weighted[i * directions + k] * ofRow;
      }
    }
  }

  /** The derivative of V by one element of a factor L, times V⁻¹r: Z (E L' + L E') Z'V⁻¹r. */
  private double[] moved(Pattern pattern, double[] rest, int parameter) {
    CovarianceStructure structure = likelihood.structure();
    int set = 0;
    while (structure.offset(set + 1) <= parameter) {
      set++;
    }
    double[][] change = change(structure, set, parameter - structure.offset(set));
    int members = pattern.count();
    double[] sums = pattern.sums(set, rest, members);
    double[] moved = new double[rest.length];
    for (int i = 0; i < pattern.size(); i++) {
      int group = pattern.groups()[set][i] * change.length;
      for (int a = 0; a < change.length; a++) {
        for (int b = 0; b < change.length; b++) {
          double weight = pattern.columns()[set][a][i] * change[a][b];
          for (int m = 0; weight != 0 && m < members; m++) {
            moved[i * members + m] += weight * sums[(group + b) * members + m];
          }
        }
      }
    }
    return moved;
  }

  private double[][] change(CovarianceStructure structure, int set, int element) {
    double[][] factor = structure.factor(state.theta(), set);
    int row = 0;
    while (CovarianceStructure.entries(row + 1) <= element) {
      row++;
    }
    int column = element - CovarianceStructure.entries(row);
    double[][] change = new double[factor.length][factor.length];
    for (int k = column; k < factor.length; k++) {
      change[row][k] += factor[k][column];
      change[k][row] += factor[k][column];
    }
    return change;
  }
}
