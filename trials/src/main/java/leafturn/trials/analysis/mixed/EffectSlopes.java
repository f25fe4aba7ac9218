package leafturn.trials.analysis.mixed;

import java.util.Arrays;

/** Selected elements of V⁻¹ and Z'V⁻¹Z, from the inverse of what elimination leaves. */
final class EffectSlopes {
  private final CrossProducts cross;
  private final double[][][] factors;
  private final double[][] inverse;

  /**
   * @param factors L of each set
   * @param inverse of S, its lower triangle
   */
  EffectSlopes(CrossProducts cross, double[][][] factors, double[][] inverse) {
    this.cross = cross;
    this.factors = factors;
    this.inverse = inverse;
  }

  /**
   * Adds the sum of Z_g'V⁻¹Z_g over the groups of the eliminated set.
   *
   * @param kept (I + Z_g'Z_g G)⁻¹ of each group
   */
  void addEliminated(double[][] sum, double weight, double[][] kept) {
    int size = sum.length;
    for (int group = 0; group < kept.length; group++) {
      int[] near = cross.near(group);
      double[] own = cross.own(group);
      double[][] met = new double[size][];
      for (int a = 0; a < size; a++) {
        for (int b = 0; b < size; b++) {
          for (int c = 0; c < size; c++) {
            sum[a][b] += weight * kept[group][a * size + c] * own[c * size + b];
          }
        }
        met[a] = met(group, kept[group], a);
        timesFactor(near, met[a]);
      }
      for (int a = 0; a < size; a++) {
        for (int b = 0; b <= a; b++) {
          double share = weight * form(near, met[a], met[b]);
          sum[a][b] -= share;
          sum[b][a] -= a == b ? 0 : share;
        }
      }
    }
  }

  /** Z_g'V_e⁻¹Z_r for one effect of a group. */
  private double[] met(int group, double[] kept, int effect) {
    int size = cross.size(cross.eliminated());
    double[] joint = cross.joint(group);
    double[] met = new double[cross.near(group).length];
    for (int i = 0; i < met.length; i++) {
      for (int c = 0; c < size; c++) {
        met[i] += kept[effect * size + c] * joint[i * size + c];
      }
    }
    return met;
  }

  /** L'x on the effects near a group, which hold whole groups. */
  private void timesFactor(int[] near, double[] x) {
    for (int i = 0; i < near.length; ) {
      double[][] factor = factors[cross.setOf(near[i] + cross.first())];
      for (int b = 0; b < factor.length; b++) {
        double sum = 0;
        for (int a = b; a < factor.length; a++) {
          sum += factor[a][b] * x[i + a];
        }
        x[i + b] = sum;
      }
      i += factor.length;
    }
  }

  /** x'S⁻¹y of vectors that are 0 but near a group. */
  private double form(int[] near, double[] x, double[] y) {
    double sum = 0;
    for (int i = 0; i < near.length; i++) {
      double[] row = inverse[near[i]];
      double ofX = 0;
      double ofY = 0;
      for (int j = 0; j < i; j++) {
        ofX += row[near[j]] * x[j];
        ofY += row[near[j]] * y[j];
      }
      sum += x[i] * ofY + y[i] * ofX + x[i] * y[i] * row[near[i]];
    }
    return sum;
  }

  /** Adds the sum over the groups of another set, from L'Z'V⁻¹ZL = I - S⁻¹. */
  void addOther(double[][] sum, double weight, int set) {
    double[][] factor = factors[set];
    int size = factor.length;
    double[][] told = new double[size][size];
    for (int group = 0; group < cross.groups(set); group++) {
      int at = cross.start(set) - cross.first() + group * size;
      for (int a = 0; a < size; a++) {
        for (int b = 0; b <= a; b++) {
          told[a][b] += (a == b ? 1 : 0) - inverse[at + a][at + b];
          told[b][a] = told[a][b];
        }
      }
    }
    double[][] lower = inverseOf(factor);
    for (int a = 0; a < size; a++) {
      for (int b = 0; b < size; b++) {
        for (int c = a; c < size; c++) {
          for (int d = b; d < size; d++) {
            sum[a][b] += weight * lower[c][a] * told[c][d] * lower[d][b];
          }
        }
      }
    }
  }

  private static double[][] inverseOf(double[][] factor) {
    int size = factor.length;
    double[][] inverse = new double[size][size];
    for (int j = 0; j < size; j++) {
      for (int i = j; i < size; i++) {
        double sum = i == j ? 1 : 0;
        for (int k = j; k < i; k++) {
          sum -= factor[i][k] * inverse[k][j];
        }
        inverse[i][j] = sum / factor[i][i];
      }
    }
    return inverse;
  }

  /**
   * The diagonal of V⁻¹.
   *
   * @param shrunk G (I + Z_g'Z_g G)⁻¹ of each group of the eliminated set
   */
  double[] diagonal(int rows, double[][] shrunk) {
    double[] diagonal = new double[rows];
    Arrays.fill(diagonal, 1);
    int size = cross.size(cross.eliminated());
    double[] predicted = new double[size];
    for (int row = 0; row < rows; row++) {
      int group = cross.at(cross.eliminated(), row) / size;
      for (int a = 0; a < size; a++) {
        predicted[a] = 0;
        for (int b = 0; b < size; b++) {
          predicted[a] += shrunk[group][a * size + b] * cross.factor(cross.eliminated(), b, row);
        }
        diagonal[row] -= predicted[a] * cross.factor(cross.eliminated(), a, row);
      }
      int[] near = cross.near(group);
      double[] met = near(row, group, predicted);
      timesFactor(near, met);
      diagonal[row] -= form(near, met, met);
    }
    return diagonal;
  }

  /** Z_r'V_e⁻¹ of one row. */
  private double[] near(int row, int group, double[] predicted) {
    int[] near = cross.near(group);
    double[] joint = cross.joint(group);
    double[] met = new double[near.length];
    for (int i = 0; i < near.length; i++) {
      for (int a = 0; a < predicted.length; a++) {
        met[i] -= joint[i * predicted.length + a] * predicted[a];
      }
    }
    for (int set = 0; set < cross.sets(); set++) {
      for (int a = 0; set != cross.eliminated() && a < cross.size(set); a++) {
        int at = Arrays.binarySearch(near, cross.at(set, row) + a - cross.first());
        met[at] += cross.factor(set, a, row);
      }
    }
    return met;
  }
}
