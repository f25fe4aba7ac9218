package leafturn.trials.analysis.ordinal;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.numeric.NewtonMinimum;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Minus the log likelihood of a cumulative logit, logit P(y &lt;= j) = threshold j - x b - s u with
 * u a standard normal for each group, integrated by ten points about its mode. The parameters are
 * the thresholds, b and, with groups, s.
 *
 * @source mccullagh1980, eq. 2.1; liu1994, eq. 2
 */
final class CumulativeLogit implements NewtonMinimum.Function {
  private static final GaussIntegrator HERMITE = new GaussIntegratorFactory().hermite(10);

  private final int[] classes;
  private final int thresholds;
  private final double[][] rows;
  private final List<int[]> groups;
  private final boolean random;

  /**
   * @param classes of the observations, from 0
   * @param count how many classes there are
   * @param rows of the fixed part, without a mean
   * @param groups rows of each group; empty for none
   */
  CumulativeLogit(int[] classes, int count, double[][] rows, List<int[]> groups) {
    this.classes = classes;
    this.thresholds = count - 1;
    this.rows = rows;
    this.random = !groups.isEmpty();
    this.groups = random ? groups : List.of(all(classes.length));
  }

  private static int[] all(int count) {
    int[] all = new int[count];
    for (int i = 0; i < count; i++) {
      all[i] = i;
    }
    return all;
  }

  int parameters() {
    return thresholds + rows[0].length + (random ? 1 : 0);
  }

  /** Thresholds at the observed shares, no effects. */
  double[] start() {
    double[] start = new double[parameters()];
    double below = 0;
    for (int j = 0; j < thresholds; j++) {
      for (int own : classes) {
        below += own == j ? 1 : 0;
      }
      double share = (below + 0.5) / (classes.length + 1);
      start[j] = Math.log(share / (1 - share));
    }
    if (random) {
      start[start.length - 1] = 0.5;
    }
    return start;
  }

  @Override
  public NewtonMinimum.Point at(double[] position) {
    double[] gradient = new double[position.length];
    double value = 0;
    for (int[] group : groups) {
      value -= random ? integral(position, group, gradient) : plain(position, group, gradient);
    }
    return new NewtonMinimum.Point(
        position, Double.isNaN(value) ? Double.POSITIVE_INFINITY : value, gradient);
  }

  private double plain(double[] position, int[] group, double[] gradient) {
    addGradient(gradient, position, group, new double[] {0, 1, 0});
    return logLikelihood(position, group, 0);
  }

  /**
   * Log of the integral over u of the group's likelihood times the normal density; its gradient is
   * the mean of the likelihood's own over the same points, weighted by what each adds.
   */
  private double integral(double[] position, int[] group, double[] gradient) {
    double spread = position[position.length - 1];
    double[] peak = peak(position, group, spread);
    int points = HERMITE.getNumberOfPoints();
    double[] u = new double[points];
    double[] shares = new double[points];
    double sum = 0;
    for (int k = 0; k < points; k++) {
      double x = HERMITE.getPoint(k);
      u[k] = peak[0] + peak[1] * x;
      double log = logLikelihood(position, group, spread * u[k]) - u[k] * u[k] / 2 + x * x;
      shares[k] = HERMITE.getWeight(k) * Math.exp(log);
      sum += shares[k];
    }
    for (int k = 0; k < points; k++) {
      if (shares[k] > 0) {
        addGradient(gradient, position, group, new double[] {spread * u[k], shares[k] / sum, u[k]});
      }
    }
    return Math.log(sum * peak[1] / Math.sqrt(2 * Math.PI));
  }

  /** Where the integrand is highest, and its width. */
  private double[] peak(double[] position, int[] group, double spread) {
    double mode = 0;
    double curvature = 1;
    for (int step = 0; step < 50; step++) {
      double[] slopes = slopes(position, group, mode, spread);
      curvature = 1 - slopes[1];
      double move = (slopes[0] - mode) / curvature;
      mode += move;
      if (Math.abs(move) < 1e-10) {
        break;
      }
    }
    return new double[] {mode, Math.sqrt(2 / curvature)};
  }

  /** First and second slope of the group's log likelihood with u. */
  private double[] slopes(double[] position, int[] group, double u, double spread) {
    double h = 1e-4;
    double middle = logLikelihood(position, group, spread * u);
    double above = logLikelihood(position, group, spread * (u + h));
    double below = logLikelihood(position, group, spread * (u - h));
    double second = (above - 2 * middle + below) / (h * h);
    return new double[] {(above - below) / (2 * h), Math.min(0, second)};
  }

  private double logLikelihood(double[] position, int[] group, double shift) {
    double sum = 0;
    for (int row : group) {
      double eta = eta(position, row) + shift;
      sum += Math.log(probability(position, classes[row], eta));
    }
    return sum;
  }

  private double eta(double[] position, int row) {
    double eta = 0;
    for (int k = 0; k < rows[row].length; k++) {
      eta += rows[row][k] * position[thresholds + k];
    }
    return eta;
  }

  private double probability(double[] position, int own, double eta) {
    double high = own == thresholds ? Double.POSITIVE_INFINITY : position[own] - eta;
    double low = own == 0 ? Double.NEGATIVE_INFINITY : position[own - 1] - eta;
    return low > 0 ? below(-low) - below(-high) : below(high) - below(low);
  }

  private static double below(double x) {
    return 1 / (1 + Math.exp(-x));
  }

  private static double density(double x) {
    double share = below(-Math.abs(x));
    return share * (1 - share);
  }

  /**
   * Adds the gradient of minus the log likelihood of a group.
   *
   * @param at shift of the group, weight of what is added, and what the shift grows by with the
   *     spread
   */
  private void addGradient(double[] gradient, double[] position, int[] group, double[] at) {
    for (int row : group) {
      double eta = eta(position, row) + at[0];
      int own = classes[row];
      double share = at[1] / probability(position, own, eta);
      double high = own == thresholds ? 0 : share * density(position[own] - eta);
      double low = own == 0 ? 0 : share * density(position[own - 1] - eta);
      if (own < thresholds) {
        gradient[own] -= high;
      }
      if (own > 0) {
        gradient[own - 1] += low;
      }
      for (int k = 0; k < rows[row].length; k++) {
        gradient[thresholds + k] += rows[row][k] * (high - low);
      }
      if (random) {
        gradient[gradient.length - 1] += at[2] * (high - low);
      }
    }
  }

  static List<int[]> groups(int[] groupOf) {
    List<List<Integer>> lists = new ArrayList<>();
    for (int i = 0; i < groupOf.length; i++) {
      while (lists.size() <= groupOf[i]) {
        lists.add(new ArrayList<>());
      }
      lists.get(groupOf[i]).add(i);
    }
    return lists.stream().map(list -> list.stream().mapToInt(Integer::intValue).toArray()).toList();
  }
}
