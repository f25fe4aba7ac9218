package leafturn.trials.analysis.ordinal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.analysis.numeric.NewtonMinimum;

/**
 * Minus the log likelihood of a cumulative logit, logit P(y &lt;= j) = threshold j - x b - s u with
 * u a standard normal for each group. The parameters are the thresholds, b and, with groups, s.
 *
 * <p>The integral over u is a trapezoidal sum about each group's own mode. Ratings that hardly
 * change within a group make the integrand flat with steep walls, to which no normal curve is near;
 * the sum converges geometrically all the same as long as its step resolves a wall, which is a
 * logit wide, and the peak.
 *
 * @source mccullagh1980, eq. 2.1; trefethen2014, theorem 5.1
 */
final class CumulativeLogit implements NewtonMinimum.Function {
  /** Largest s, in logits; beyond it the groups differ without bound (variance 1,600). */
  static final double LARGEST_SPREAD = 40;

  /** Step of the sum in widths of a wall or of the peak. */
  private static final double STEP = 0.5;

  /** Points whose log lies this far below the peak's add less than rounding does. */
  private static final double NEGLIGIBLE = 37;

  private static final double LOG_ROOT_TWO_PI = Math.log(2 * Math.PI) / 2;

  private final int[] classes;
  private final int thresholds;
  private final double[][] rows;
  private final List<int[]> groups;
  private final boolean random;
  private final double step;

  /**
   * @param classes of the observations, from 0
   * @param count how many classes there are
   * @param rows of the fixed part, without a mean
   * @param groups rows of each group; empty for none
   */
  CumulativeLogit(int[] classes, int count, double[][] rows, List<int[]> groups) {
    this(classes, count, rows, groups, STEP);
  }

  private CumulativeLogit(
      int[] classes, int count, double[][] rows, List<int[]> groups, double step) {
    this.classes = classes;
    this.thresholds = count - 1;
    this.rows = rows;
    this.random = !groups.isEmpty();
    this.groups = random ? groups : List.of(IntStream.range(0, classes.length).toArray());
    this.step = step;
  }

  /** The same likelihood from twice the points. */
  CumulativeLogit finer() {
    return new CumulativeLogit(
        classes, thresholds + 1, rows, random ? groups : List.of(), step / 2);
  }

  int thresholds() {
    return thresholds;
  }

  /** Thresholds at the observed shares, no effects. */
  double[] start() {
    double[] start = new double[thresholds + rows[0].length + (random ? 1 : 0)];
    double below = 0;
    for (int j = 0; j < thresholds; j++) {
      for (int own : classes) {
        below += own == j ? 1 : 0;
      }
      double share = (below + 0.5) / (classes.length + 1);
      start[j] = Math.log(share / (1 - share));
    }
    return start;
  }

  @Override
  public NewtonMinimum.Point at(double[] position) {
    double[] gradient = new double[position.length];
    double spread = random ? position[position.length - 1] : 0;
    if (!(Math.abs(spread) <= LARGEST_SPREAD) || !inOrder(position)) {
      return new NewtonMinimum.Point(position, Double.POSITIVE_INFINITY, gradient);
    }
    double value = 0;
    for (int[] own : groups) {
      Group group = new Group(own, position);
      value -= random ? integral(group, spread, gradient) : group.logLikelihood(0);
      if (!random) {
        group.add(1, 0);
      }
      group.addTo(gradient);
      value -= gaps(position, own, gradient);
    }
    return new NewtonMinimum.Point(
        position, Double.isNaN(value) ? Double.POSITIVE_INFINITY : value, gradient);
  }

  private boolean inOrder(double[] position) {
    return IntStream.range(1, thresholds).allMatch(j -> position[j] > position[j - 1]);
  }

  /**
   * The part of the log likelihood that u does not move: F(h) - F(l) = F(h) (1 - F(l)) (1 -
   * exp(l-h)).
   */
  private double gaps(double[] position, int[] group, double[] gradient) {
    double sum = 0;
    for (int row : group) {
      int own = classes[row];
      if (own > 0 && own < thresholds) {
        double gap = position[own] - position[own - 1];
        sum += Math.log(-Math.expm1(-gap));
        gradient[own] -= 1 / Math.expm1(gap);
        gradient[own - 1] += 1 / Math.expm1(gap);
      }
    }
    return sum;
  }

  /**
   * Log of the integral over u of the group's likelihood times the normal density; its gradient is
   * the mean of the likelihood's own over the same points, weighted by what each adds.
   */
  private double integral(Group group, double spread, double[] gradient) {
    double mode = mode(group, spread);
    double peak = group.logLikelihood(spread * mode) - mode * mode / 2;
    double width = 1 / Math.sqrt(1 - spread * spread * group.curvature());
    double h = step * Math.min(width, 1 / Math.max(1, Math.abs(spread)));
    group.add(1, mode);
    double sum = 1;
    for (int side = -1; side <= 1; side += 2) {
      double log = 0;
      for (int k = 1; log > -NEGLIGIBLE; k++) {
        double u = mode + side * k * h;
        log = group.logLikelihood(spread * u) - u * u / 2 - peak;
        double share = Math.exp(log);
        group.add(share, u);
        sum += share;
      }
    }
    group.divide(sum);
    gradient[gradient.length - 1] += group.spreadSlope;
    return Math.log(sum * h) + peak - LOG_ROOT_TWO_PI;
  }

  /** Where the integrand, which is log-concave, is highest: Newton's method within a bracket. */
  private double mode(Group group, double spread) {
    double high = Math.abs(spread) * group.own.length;
    double low = -high;
    double mode = 0;
    double near = 1e-3 / Math.max(1, Math.abs(spread));
    while (high - low > near) {
      group.logLikelihood(spread * mode);
      double slope = spread * group.slope() - mode;
      if (slope > 0) {
        low = mode;
      } else {
        high = mode;
      }
      double move = slope / (1 - spread * spread * group.curvature());
      if (Math.abs(move) < near) {
        break;
      }
      double next = mode + move;
      mode = next > low && next < high ? next : (low + high) / 2;
    }
    return mode;
  }

  /** One group's ratings, their linear predictors, and sums over the points of u. */
  private final class Group {
    private final int[] own;
    private final double[] high;
    private final double[] low;
    private final double[] above;
    private final double[] below;
    private final double[] aboveSum;
    private final double[] belowSum;
    private double spreadSlope;

    Group(int[] own, double[] position) {
      this.own = own;
      high = new double[own.length];
      low = new double[own.length];
      above = new double[own.length];
      below = new double[own.length];
      aboveSum = new double[own.length];
      belowSum = new double[own.length];
      for (int i = 0; i < own.length; i++) {
        double eta = 0;
        for (int k = 0; k < rows[own[i]].length; k++) {
          eta += rows[own[i]][k] * position[thresholds + k];
        }
        int rating = classes[own[i]];
        high[i] = rating == thresholds ? Double.POSITIVE_INFINITY : position[rating] - eta;
        low[i] = rating == 0 ? Double.NEGATIVE_INFINITY : position[rating - 1] - eta;
      }
    }

    /** Sum of log F(h) + log(1 - F(l)); keeps 1 - F(h) and F(l) of each rating. */
    double logLikelihood(double shift) {
      double sum = 0;
      for (int i = 0; i < own.length; i++) {
        double h = high[i] - shift;
        double l = low[i] - shift;
        double tailOfHigh = Math.exp(-Math.abs(h));
        double tailOfLow = Math.exp(-Math.abs(l));
        sum += Math.min(h, 0) - Math.max(l, 0) - Math.log1p(tailOfHigh) - Math.log1p(tailOfLow);
        above[i] = (h > 0 ? tailOfHigh : 1) / (1 + tailOfHigh);
        below[i] = (l > 0 ? 1 : tailOfLow) / (1 + tailOfLow);
      }
      return sum;
    }

    /** Slope of the last log likelihood with the shift. */
    double slope() {
      double sum = 0;
      for (int i = 0; i < own.length; i++) {
        sum += below[i] - above[i];
      }
      return sum;
    }

    /** Second slope of the last log likelihood with the shift. */
    double curvature() {
      double sum = 0;
      for (int i = 0; i < own.length; i++) {
        sum -= above[i] * (1 - above[i]) + below[i] * (1 - below[i]);
      }
      return sum;
    }

    /** Adds the slopes at the last point with its weight. */
    void add(double share, double u) {
      for (int i = 0; i < own.length; i++) {
        aboveSum[i] += share * above[i];
        belowSum[i] += share * below[i];
      }
      spreadSlope -= share * u * slope();
    }

    void divide(double sum) {
      for (int i = 0; i < own.length; i++) {
        aboveSum[i] /= sum;
        belowSum[i] /= sum;
      }
      spreadSlope /= sum;
    }

    /** Adds the slopes of minus the log likelihood with thresholds and effects. */
    void addTo(double[] gradient) {
      for (int i = 0; i < own.length; i++) {
        int rating = classes[own[i]];
        if (rating < thresholds) {
          gradient[rating] -= aboveSum[i];
        }
        if (rating > 0) {
          gradient[rating - 1] += belowSum[i];
        }
        for (int k = 0; k < rows[own[i]].length; k++) {
          gradient[thresholds + k] += rows[own[i]][k] * (aboveSum[i] - belowSum[i]);
        }
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
