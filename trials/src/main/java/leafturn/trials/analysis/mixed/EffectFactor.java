package leafturn.trials.analysis.mixed;

import java.util.Arrays;
import java.util.Objects;
import leafturn.trials.analysis.mixed.CovarianceStructure.Slopes;
import leafturn.trials.analysis.numeric.UpperFactor;
import org.jspecify.annotations.Nullable;

/**
 * V = I + Z G Z' by way of its random effects, for independent errors. With G = L L' the
 * determinant of V is that of I + L'Z'ZL. The set with the most effects is eliminated group by
 * group; what remains for the other sets is factored as a dense matrix. What is left of a vector
 * when its predicted effects are taken off is its product with V⁻¹.
 *
 * @source henderson1959; bates2015, section 3.4
 */
final class EffectFactor extends BlockFactor {
  /** Below this, slopes are not told by the inverse of S with enough digits. */
  private static final double TELLING = 1e-4;

  private static final int TOGETHER = 32;

  private final CrossProducts cross;
  private final int rows;
  private final double[][][] factors;

  /** (I + Z_g'Z_g G)⁻¹ of each group of the eliminated set, and G times it. */
  private final double[][] kept;

  private final double[][] shrunk;
  private final UpperFactor schur;
  private final double logDeterminant;
  private double @Nullable [][] schurInverse;

  private EffectFactor(
      CrossProducts cross, int rows, double[][][] factors, Elimination elimination) {
    this.cross = cross;
    this.rows = rows;
    this.factors = factors;
    this.kept = elimination.kept();
    this.shrunk = elimination.shrunk();
    this.schur = elimination.schur();
    this.logDeterminant = elimination.logDeterminant();
  }

  /** Null where the numbers have no determinant. */
  static @Nullable EffectFactor of(
      CrossProducts cross, int rows, CovarianceStructure structure, double[] theta) {
    double[][][] factors = new double[cross.sets()][][];
    for (int set = 0; set < factors.length; set++) {
      factors[set] = structure.factor(theta, set);
    }
    int first = cross.eliminated();
    double[][] gamma = first < 0 ? new double[0][] : structure.gamma(theta, first);
    Elimination elimination = Elimination.of(cross, gamma, factors);
    return elimination == null ? null : new EffectFactor(cross, rows, factors, elimination);
  }

  /** L x of the remaining effects in place. */
  private void factorTimes(double[] x, int columns) {
    for (int effect = 0; effect < cross.remaining(); ) {
      double[][] factor = factors[cross.setOf(effect + cross.first())];
      for (int a = factor.length - 1; a >= 0; a--) {
        for (int j = 0; j < columns; j++) {
          double sum = 0;
          for (int b = 0; b <= a; b++) {
            sum += factor[a][b] * x[(effect + b) * columns + j];
          }
          x[(effect + a) * columns + j] = sum;
        }
      }
      effect += factor.length;
    }
  }

  @Override
  double logDeterminant() {
    return logDeterminant;
  }

  @Override
  double[] solve(double[] x, int columns) {
    if (cross.effects() == 0) {
      return x.clone();
    }
    double[] sums = cross.times(x, columns);
    int first = cross.first() * columns;
    double[] others = Arrays.copyOfRange(sums, first, sums.length);
    double[] own = Arrays.copyOf(sums, first);
    addNear(others, timesShrunk(own, columns), columns, false);
    Elimination.timesFactor(others, columns, cross, factors);
    schur.solve(others, columns);
    factorTimes(others, columns);
    addNear(own, others, columns, true);
    System.arraycopy(timesShrunk(own, columns), 0, sums, 0, first);
    System.arraycopy(others, 0, sums, first, others.length);
    return cross.less(x, sums, columns);
  }

  private double[] timesShrunk(double[] own, int columns) {
    int size = cross.size(cross.eliminated());
    double[] product = new double[own.length];
    for (int group = 0; group < shrunk.length; group++) {
      for (int a = 0; a < size; a++) {
        int to = (group * size + a) * columns;
        for (int b = 0; b < size; b++) {
          double weight = shrunk[group][a * size + b];
          int from = (group * size + b) * columns;
          for (int j = 0; j < columns; j++) {
            product[to + j] += weight * own[from + j];
          }
        }
      }
    }
    return product;
  }

  /** Takes off what groups and the effects near them share, in one direction or the other. */
  private void addNear(double[] to, double[] from, int columns, boolean toGroups) {
    int size = cross.size(cross.eliminated());
    for (int group = 0; group < shrunk.length; group++) {
      int[] near = cross.near(group);
      double[] joint = cross.joint(group);
      for (int i = 0; i < near.length; i++) {
        for (int a = 0; a < size; a++) {
          double weight = joint[i * size + a];
          int ofGroup = (group * size + a) * columns;
          int ofNear = near[i] * columns;
          int target = toGroups ? ofGroup : ofNear;
          int source = toGroups ? ofNear : ofGroup;
          for (int j = 0; j < columns; j++) {
            to[target + j] -= weight * from[source + j];
          }
        }
      }
    }
  }

  @Override
  void addTraces(Slopes slopes, double weight) {
    if (cross.effects() == 0) {
      return;
    }
    EffectSlopes own = new EffectSlopes(cross, factors, schurInverse());
    own.addEliminated(slopes.gamma()[cross.eliminated()], weight, kept);
    for (int set = 0; set < cross.sets(); set++) {
      if (set != cross.eliminated()) {
        if (isTelling(factors[set])) {
          own.addOther(slopes.gamma()[set], weight, set);
        } else {
          addSolved(slopes.gamma()[set], weight, set);
        }
      }
    }
  }

  private static boolean isTelling(double[][] factor) {
    for (int a = 0; a < factor.length; a++) {
      if (Math.abs(factor[a][a]) < TELLING) {
        return false;
      }
    }
    return true;
  }

  /** Sums of Z_g'V⁻¹Z_g by solving for each effect. */
  private void addSolved(double[][] sum, double weight, int set) {
    int size = cross.size(set);
    for (int group = 0; group < cross.groups(set); group += TOGETHER) {
      int columns = Math.min(TOGETHER, cross.groups(set) - group) * size;
      double[] z = new double[rows * columns];
      int from = cross.start(set) + group * size;
      fill(z, columns, set, from);
      double[] met = cross.times(solve(z, columns), columns);
      for (int effect = 0; effect < columns; effect++) {
        int a = effect % size;
        for (int b = 0; b < size; b++) {
          sum[a][b] += weight * met[(from + effect) * columns + effect - a + b];
        }
      }
    }
  }

  /** Columns of Z from one effect of a set on. */
  private void fill(double[] z, int columns, int set, int from) {
    for (int row = 0; row < rows; row++) {
      for (int a = 0; a < cross.size(set); a++) {
        int column = cross.at(set, row) + a - from;
        if (column >= 0 && column < columns) {
          z[row * columns + column] = cross.factor(set, a, row);
        }
      }
    }
  }

  private double[][] schurInverse() {
    if (schurInverse == null) {
      schurInverse = schur.inverse();
    }
    return Objects.requireNonNull(schurInverse);
  }

  @Override
  double[] diagonal() {
    return cross.effects() == 0
        ? ones()
        : new EffectSlopes(cross, factors, schurInverse()).diagonal(rows, shrunk);
  }

  private double[] ones() {
    double[] ones = new double[rows];
    Arrays.fill(ones, 1);
    return ones;
  }

  @Override
  Moves moves(double[] weighted, int directions) {
    int effects = cross.effects();
    double[] z = new double[rows * effects];
    for (int set = 0; set < cross.sets(); set++) {
      for (int row = 0; row < rows; row++) {
        for (int a = 0; a < cross.size(set); a++) {
          z[row * effects + cross.at(set, row) + a] = cross.factor(set, a, row);
        }
      }
    }
    double[] between = cross.times(solve(z, effects), effects);
    return new EffectMoves(cross, between, cross.times(weighted, directions), directions).moves();
  }
}
