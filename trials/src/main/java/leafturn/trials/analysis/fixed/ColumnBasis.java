package leafturn.trials.analysis.fixed;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.numeric.Matrices;
import org.jspecify.annotations.Nullable;

/**
 * An orthonormal basis of the columns of a design matrix, X = Q T, by Gram-Schmidt with a second
 * pass where the first takes much off, which keeps it orthogonal to working precision. A column
 * that adds nothing to those before it is aliased: its coefficient cannot be estimated beside
 * theirs.
 *
 * @source golub2013, section 5.2.8
 */
public final class ColumnBasis {
  /** A column is aliased if less than this share of its length is new. */
  private static final double NEW_SHARE = 1e-9;

  /** A second pass is needed where the first leaves less than this share of the length. */
  private static final double ENOUGH_LEFT = 0.9;

  private final int columns;
  private final List<Integer> kept = new ArrayList<>();
  private final List<double[]> basis = new ArrayList<>();
  private final List<double[]> shares = new ArrayList<>();

  /** The basis of the columns of a matrix of {@code [row][column]}. */
  public ColumnBasis(double[][] rows) {
    columns = rows[0].length;
    for (int j = 0; j < columns; j++) {
      double[] column = new double[rows.length];
      for (int i = 0; i < rows.length; i++) {
        column[i] = rows[i][j];
      }
      add(j, column);
    }
  }

  private void takeShares(double[] column, double[] share) {
    for (int k = 0; k < basis.size(); k++) {
      double[] direction = basis.get(k);
      double along = Matrices.dot(direction, column);
      share[k] += along;
      for (int i = 0; i < column.length; i++) {
        column[i] -= along * direction[i];
      }
    }
  }

  private void add(int index, double[] column) {
    double length = Math.sqrt(Matrices.dot(column, column));
    double[] share = new double[basis.size() + 1];
    double before = length;
    for (int pass = 0; pass < 2; pass++) {
      takeShares(column, share);
      double after = Math.sqrt(Matrices.dot(column, column));
      if (after > ENOUGH_LEFT * before) {
        break;
      }
      before = after;
    }
    double rest = Math.sqrt(Matrices.dot(column, column));
    boolean adds = rest > NEW_SHARE * length && length > 0;
    share[basis.size()] = adds ? rest : 0;
    shares.add(share);
    if (adds) {
      for (int i = 0; i < column.length; i++) {
        column[i] /= rest;
      }
      kept.add(index);
      basis.add(column);
    }
  }

  /** The number of independent columns. */
  public int rank() {
    return basis.size();
  }

  /** Whether a column is not determined by those before it. */
  public boolean isKept(int column) {
    return kept.contains(column);
  }

  /** The basis, {@code [row][direction]}. */
  public double[][] rows() {
    return Matrices.transpose(basis.toArray(double[][]::new));
  }

  /** log |T| of the independent columns. */
  public double logDeterminant() {
    double sum = 0;
    for (int k = 0; k < kept.size(); k++) {
      sum += Math.log(shares.get(kept.get(k))[k]);
    }
    return sum;
  }

  /**
   * A linear function of all coefficients as a function of the basis' coefficients.
   *
   * @param function weights of the columns' coefficients
   * @return weights of the basis' coefficients, or null if the function cannot be estimated
   */
  public double @Nullable [] onBasis(double[] function) {
    double[] onBasis = keptOnBasis(function);
    return isEstimable(function, onBasis) ? onBasis : null;
  }

  private double[] keptOnBasis(double[] function) {
    double[] onBasis = new double[rank()];
    for (int k = 0; k < rank(); k++) {
      double[] share = shares.get(kept.get(k));
      double sum = function[kept.get(k)];
      for (int l = 0; l < k; l++) {
        sum -= share[l] * onBasis[l];
      }
      onBasis[k] = sum / share[k];
    }
    return onBasis;
  }

  /**
   * The coefficient of one column, with those of aliased columns held at 0, as a function of the
   * basis' coefficients.
   *
   * @return weights of the basis' coefficients, or null for an aliased column
   */
  public double @Nullable [] coefficientOnBasis(int column) {
    if (!isKept(column)) {
      return null;
    }
    double[] function = new double[columns];
    function[column] = 1;
    return keptOnBasis(function);
  }

  /**
   * What each of some columns adds to all columns before it, as functions of the basis'
   * coefficients in which that column's own coefficient counts 1; none for aliased columns.
   */
  public double[][] inOrder(int[] columns) {
    List<double[]> functions = new ArrayList<>();
    for (int column : columns) {
      int k = kept.indexOf(column);
      if (k >= 0) {
        double[] function = new double[rank()];
        function[k] = 1 / shares.get(column)[k];
        functions.add(function);
      }
    }
    return functions.toArray(double[][]::new);
  }

  /** Whether a vector over the rows is a combination of the columns. */
  public boolean spans(double[] vector) {
    double[] rest = vector.clone();
    for (int pass = 0; pass < 2; pass++) {
      for (double[] direction : basis) {
        double along = Matrices.dot(direction, rest);
        for (int i = 0; i < rest.length; i++) {
          rest[i] -= along * direction[i];
        }
      }
    }
    return Matrices.dot(rest, rest) <= NEW_SHARE * Matrices.dot(vector, vector);
  }

  /** A linear function of the basis' coefficients as one of the columns' coefficients. */
  public double[] onColumns(double[] onBasis) {
    double[] onColumns = new double[columns];
    for (int j = 0; j < columns; j++) {
      double[] share = shares.get(j);
      for (int k = 0; k < rank() && k < share.length; k++) {
        onColumns[j] += share[k] * onBasis[k];
      }
    }
    return onColumns;
  }

  private boolean isEstimable(double[] function, double[] onBasis) {
    for (int j = 0; j < columns; j++) {
      double[] share = shares.get(j);
      double implied = 0;
      double size = Math.abs(function[j]);
      for (int k = 0; k < rank() && k < share.length; k++) {
        implied += share[k] * onBasis[k];
        size += Math.abs(share[k] * onBasis[k]);
      }
      if (Math.abs(function[j] - implied) > 1e-7 * size) {
        return false;
      }
    }
    return true;
  }

  /** Combinations of columns that are 0 in every row, one for each aliased column. */
  public List<double[]> nullCombinations() {
    List<double[]> combinations = new ArrayList<>();
    for (int j = 0; j < columns; j++) {
      if (!isKept(j)) {
        double[] share = new double[rank()];
        System.arraycopy(shares.get(j), 0, share, 0, Math.min(rank(), shares.get(j).length - 1));
        double[] combination = solve(share);
        for (int k = 0; k < columns; k++) {
          combination[k] = -combination[k];
        }
        combination[j] = 1;
        combinations.add(combination);
      }
    }
    return combinations;
  }

  /** The coefficients of the columns that lie nearest to a vector, 0 for aliased columns. */
  public double[] solve(double[] onBasis) {
    double[] coefficients = new double[columns];
    for (int k = rank() - 1; k >= 0; k--) {
      double sum = onBasis[k];
      for (int l = k + 1; l < rank(); l++) {
        sum -= shares.get(kept.get(l))[k] * coefficients[kept.get(l)];
      }
      coefficients[kept.get(k)] = sum / shares.get(kept.get(k))[k];
    }
    return coefficients;
  }
}
