package leafturn.trials.analysis.numeric;

import leafturn.trials.analysis.data.TrialFaultException;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;

/** Products and inverses of the small matrices of the fixed part, as {@code [row][column]}. */
public final class Matrices {
  private Matrices() {}

  /** A B. */
  public static double[][] product(double[][] a, double[][] b) {
    int columns = b[0].length;
    double[][] product = new double[a.length][columns];
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < b.length; k++) {
        double factor = a[i][k];
        if (factor != 0) {
          for (int j = 0; j < columns; j++) {
            product[i][j] += factor * b[k][j];
          }
        }
      }
    }
    return product;
  }

  /** A v. */
  public static double[] product(double[][] a, double[] v) {
    double[] product = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      product[i] = dot(a[i], v);
    }
    return product;
  }

  /** The sum of the products of two vectors. */
  public static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** v' A w. */
  public static double form(double[] v, double[][] a, double[] w) {
    return dot(v, product(a, w));
  }

  /** A'. */
  public static double[][] transpose(double[][] a) {
    double[][] transpose = new double[a[0].length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < a[0].length; j++) {
        transpose[j][i] = a[i][j];
      }
    }
    return transpose;
  }

  /** tr(A B). */
  public static double traceOfProduct(double[][] a, double[][] b) {
    double trace = 0;
    for (int i = 0; i < a.length; i++) {
      for (int k = 0; k < b.length; k++) {
        trace += a[i][k] * b[k][i];
      }
    }
    return trace;
  }

  /** Adds {@code weight} times B to A. */
  public static void add(double[][] a, double weight, double[][] b) {
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < a[i].length; j++) {
        a[i][j] += weight * b[i][j];
      }
    }
  }

  /** Multiplies every element of A. */
  public static void multiply(double[][] a, double factor) {
    for (double[] row : a) {
      for (int j = 0; j < row.length; j++) {
        row[j] *= factor;
      }
    }
  }

  /**
   * Eigenvalues and eigenvectors of a matrix that is symmetric up to rounding.
   *
   * @throws TrialFaultException when its elements lie too far apart for them to be found
   */
  public static EigenDecompositionSymmetric eigen(double[][] symmetric) {
    double[][] exact = new double[symmetric.length][symmetric.length];
    for (int i = 0; i < exact.length; i++) {
      for (int j = 0; j <= i; j++) {
        exact[i][j] = (symmetric[i][j] + symmetric[j][i]) / 2;
        exact[j][i] = exact[i][j];
      }
    }
    try {
      return new EigenDecompositionSymmetric(new Array2DRowRealMatrix(exact, false));
    } catch (MathRuntimeException noEnd) {
      throw new TrialFaultException(
          "The search for the variances found no end, since the values lie too far apart; look for one in another unit, or compare on the log scale.");
    }
  }

  /**
   * The inverse of a symmetric matrix; directions in which it is flat are left out, as in the
   * pseudoinverse. Rows and columns are first scaled to a unit diagonal, so that units do not
   * decide what is flat.
   *
   * @source golub2013, section 5.5
   */
  public static double[][] inverseOfSymmetric(double[][] symmetric) {
    int order = symmetric.length;
    double[] scale = new double[order];
    double[][] scaled = new double[order][order];
    for (int i = 0; i < order; i++) {
      scale[i] = symmetric[i][i] > 0 ? Math.sqrt(symmetric[i][i]) : 1;
    }
    for (int i = 0; i < order; i++) {
      for (int j = 0; j < order; j++) {
        scaled[i][j] = (symmetric[i][j] + symmetric[j][i]) / (2 * scale[i] * scale[j]);
      }
    }
    EigenDecompositionSymmetric eigen = eigen(scaled);
    double[][] inverse = new double[order][order];
    for (int k = 0; k < order; k++) {
      double value = eigen.getEigenvalue(k);
      if (Math.abs(value) > 1e-11) {
        addOuter(inverse, 1 / value, eigen.getEigenvector(k).toArray(), scale);
      }
    }
    return inverse;
  }

  private static void addOuter(double[][] sum, double weight, double[] vector, double[] scale) {
    for (int i = 0; i < sum.length; i++) {
      for (int j = 0; j < sum.length; j++) {
        sum[i][j] += weight * (vector[i] / scale[i]) * (vector[j] / scale[j]);
      }
    }
  }
}
