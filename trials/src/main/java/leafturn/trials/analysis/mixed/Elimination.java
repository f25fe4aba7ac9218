package leafturn.trials.analysis.mixed;

import java.util.Arrays;
import leafturn.trials.analysis.numeric.SmallInverse;
import leafturn.trials.analysis.numeric.UpperFactor;
import org.jspecify.annotations.Nullable;

/**
 * The set of random effects with the most of them eliminated group by group, and what remains for
 * the others: S = I + L'KL with K = Z_r'V_e⁻¹Z_r, V_e the share of the eliminated set in V.
 *
 * @param kept (I + Z_g'Z_g G)⁻¹ of each group of the eliminated set
 * @param shrunk G times it
 * @param schur the factor of S
 * @param logDeterminant log |V|
 */
record Elimination(double[][] kept, double[][] shrunk, UpperFactor schur, double logDeterminant) {

  /**
   * Eliminates the largest set.
   *
   * @param gamma G of the eliminated set
   * @param factors L of each set
   * @return null where the numbers have no determinant
   */
  static @Nullable Elimination of(CrossProducts cross, double[][] gamma, double[][][] factors) {
    int groups = cross.eliminated() < 0 ? 0 : cross.groups(cross.eliminated());
    double[] flat = Arrays.stream(gamma).flatMapToDouble(Arrays::stream).toArray();
    double[][] kept = new double[groups][];
    double[][] shrunk = new double[groups][];
    double logDeterminant = 0;
    int size = gamma.length;
    for (int group = 0; group < groups; group++) {
      double[] whole = product(cross.own(group), flat, size);
      for (int a = 0; a < size; a++) {
        whole[a * size + a] += 1;
      }
      double determinant = SmallInverse.invert(whole, size);
      if (!(determinant > 0) || Double.isInfinite(determinant)) {
        return null;
      }
      logDeterminant += Math.log(determinant);
      kept[group] = whole;
      shrunk[group] = product(flat, whole, size);
    }
    UpperFactor schur = UpperFactor.of(remaining(cross, shrunk, factors));
    return schur == null
        ? null
        : new Elimination(kept, shrunk, schur, logDeterminant + schur.logDeterminant());
  }

  private static double[] product(double[] a, double[] b, int size) {
    double[] product = new double[size * size];
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < size; k++) {
        for (int j = 0; j < size; j++) {
          product[i * size + j] += a[i * size + k] * b[k * size + j];
        }
      }
    }
    return product;
  }

  /** I + L'KL. */
  private static double[][] remaining(
      CrossProducts cross, double[][] shrunk, double[][][] factors) {
    int order = cross.remaining();
    double[][] k = new double[order][];
    for (int i = 0; i < order; i++) {
      k[i] = cross.others()[i].clone();
    }
    for (int group = 0; group < shrunk.length; group++) {
      takeGroup(k, cross, group, shrunk[group]);
    }
    for (int i = 0; i < order; i++) {
      for (int j = 0; j < i; j++) {
        k[i][j] = k[j][i];
      }
    }
    spread(k, cross, factors);
    for (int i = 0; i < order; i++) {
      k[i][i] += 1;
    }
    return k;
  }

  private static void takeGroup(double[][] k, CrossProducts cross, int group, double[] shrunk) {
    int[] near = cross.near(group);
    double[] joint = cross.joint(group);
    int size = cross.size(cross.eliminated());
    double[] row = new double[size];
    for (int i = 0; i < near.length; i++) {
      for (int b = 0; b < size; b++) {
        row[b] = 0;
        for (int a = 0; a < size; a++) {
          row[b] += joint[i * size + a] * shrunk[a * size + b];
        }
      }
      double[] target = k[near[i]];
      for (int j = i; j < near.length; j++) {
        double sum = 0;
        for (int b = 0; b < size; b++) {
          sum += row[b] * joint[j * size + b];
        }
        target[near[j]] -= sum;
      }
    }
  }

  /** L'KL in place. */
  private static void spread(double[][] k, CrossProducts cross, double[][][] factors) {
    for (double[] row : k) {
      timesFactor(row, 1, cross, factors);
    }
    for (int effect = 0; effect < k.length; ) {
      double[][] factor = factors[cross.setOf(effect + cross.first())];
      for (int b = 0; b < factor.length; b++) {
        for (int j = 0; j < k.length; j++) {
          double sum = 0;
          for (int a = b; a < factor.length; a++) {
            sum += factor[a][b] * k[effect + a][j];
          }
          k[effect + b][j] = sum;
        }
      }
      effect += factor.length;
    }
  }

  /** L'x of the remaining effects in place. */
  static void timesFactor(double[] x, int columns, CrossProducts cross, double[][][] factors) {
    for (int effect = 0; effect < cross.remaining(); ) {
      double[][] factor = factors[cross.setOf(effect + cross.first())];
      for (int b = 0; b < factor.length; b++) {
        for (int j = 0; j < columns; j++) {
          double sum = 0;
          for (int a = b; a < factor.length; a++) {
            sum += factor[a][b] * x[(effect + a) * columns + j];
          }
          x[(effect + b) * columns + j] = sum;
        }
      }
      effect += factor.length;
    }
  }
}
