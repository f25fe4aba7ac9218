package leafturn.trials.analysis.mixed;

import java.util.List;

/**
 * The covariance V of the observations relative to the residual variance, as a function of one
 * vector of parameters: for each set of random effects the triangular factor L of their covariance
 * L L', row by row, then those of the correlation over time. In L a variance of 0 is an ordinary
 * point, so that the search needs no bounds.
 *
 * @param effects the sets of random effects
 * @param time the correlation over time
 * @source bates2015, section 2.2
 */
record CovarianceStructure(List<RandomEffects> effects, TimeCorrelation time) {

  /** How many parameters there are. */
  int parameters() {
    return timeOffset() + time.parameters();
  }

  /** Where the correlation over time begins. */
  int timeOffset() {
    return offset(effects.size());
  }

  /** Where a set of random effects begins. */
  int offset(int set) {
    int offset = 0;
    for (int t = 0; t < set; t++) {
      offset += entries(effects.get(t).size());
    }
    return offset;
  }

  /** The free parameters of the correlation over time. */
  double[] timeParameters(double[] theta) {
    double[] free = new double[time.parameters()];
    System.arraycopy(theta, timeOffset(), free, 0, free.length);
    return free;
  }

  /** The factor of one set, {@code [row][column]}. */
  double[][] factor(double[] theta, int set) {
    int size = effects.get(set).size();
    double[][] factor = new double[size][size];
    int next = offset(set);
    for (int i = 0; i < size; i++) {
      for (int j = 0; j <= i; j++) {
        factor[i][j] = theta[next++];
      }
    }
    return factor;
  }

  /** The covariance of the effects of one set, relative to the residual variance. */
  double[][] gamma(double[] theta, int set) {
    double[][] factor = factor(theta, set);
    int size = factor.length;
    double[][] gamma = new double[size][size];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        for (int k = 0; k <= Math.min(i, j); k++) {
          gamma[i][j] += factor[i][k] * factor[j][k];
        }
      }
    }
    return gamma;
  }

  /**
   * Turns slopes with respect to V into slopes with respect to the parameters: for a factor L with
   * slope M of L L' it is 2 M L.
   */
  double[] chain(double[] theta, Slopes slopes) {
    double[] chained = new double[parameters()];
    for (int set = 0; set < effects.size(); set++) {
      double[][] factor = factor(theta, set);
      double[][] gamma = slopes.gamma()[set];
      int next = offset(set);
      for (int i = 0; i < factor.length; i++) {
        for (int j = 0; j <= i; j++) {
          double sum = 0;
          for (int k = j; k < factor.length; k++) {
            sum += gamma[i][k] * factor[k][j];
          }
          chained[next++] = 2 * sum;
        }
      }
    }
    System.arraycopy(slopes.time(), 0, chained, timeOffset(), slopes.time().length);
    return chained;
  }

  /** Where a search may begin: each random effect as variable as the residual. */
  double[][] starts() {
    double[][] timeStarts = time.starts();
    double[][] starts = new double[timeStarts.length][parameters()];
    for (int s = 0; s < starts.length; s++) {
      for (int set = 0; set < effects.size(); set++) {
        int next = offset(set);
        for (int i = 0; i < effects.get(set).size(); i++) {
          starts[s][next + entries(i + 1) - 1] = 1;
        }
      }
      System.arraycopy(timeStarts[s], 0, starts[s], timeOffset(), timeStarts[s].length);
    }
    return starts;
  }

  static int entries(int size) {
    return size * (size + 1) / 2;
  }

  /**
   * Slopes of a function with respect to the relative covariances of random effects and the
   * parameters of the correlation over time.
   *
   * @param gamma symmetric matrices M, the change being the trace of M times the change of gamma
   */
  record Slopes(double[][][] gamma, double[] time) {
    static Slopes none(CovarianceStructure of) {
      double[][][] gamma = new double[of.effects.size()][][];
      for (int set = 0; set < gamma.length; set++) {
        int size = of.effects.get(set).size();
        gamma[set] = new double[size][size];
      }
      return new Slopes(gamma, new double[of.time.parameters()]);
    }
  }
}
