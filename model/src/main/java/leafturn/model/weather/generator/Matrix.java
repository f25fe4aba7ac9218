package leafturn.model.weather.generator;

/** Arithmetic of small square matrices, {@code [row][column]}. */
final class Matrix {
  private Matrix() {}

  static double[][] times(double[][] left, double[][] right) {
    int size = left.length;
    double[][] product = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        for (int inner = 0; inner < size; inner++) {
          product[row][column] += left[row][inner] * right[inner][column];
        }
      }
    }
    return product;
  }

  static double[][] transposed(double[][] matrix) {
    int size = matrix.length;
    double[][] result = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        result[column][row] = matrix[row][column];
      }
    }
    return result;
  }

  static double[][] plus(double[][] left, double[][] right, double factor) {
    int size = left.length;
    double[][] sum = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        sum[row][column] = left[row][column] + factor * right[row][column];
      }
    }
    return sum;
  }

  /**
   * Lower triangle L of a symmetric matrix L L'.
   *
   * @throws ArithmeticException when the matrix is not positive definite
   */
  static double[][] lowerTriangle(double[][] matrix) {
    int size = matrix.length;
    double[][] lower = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column <= row; column++) {
        double rest = matrix[row][column];
        for (int inner = 0; inner < column; inner++) {
          rest -= lower[row][inner] * lower[column][inner];
        }
        if (row == column && !(rest > 1e-12)) {
          throw new ArithmeticException("the matrix is not positive definite");
        }
        lower[row][column] = row == column ? Math.sqrt(rest) : rest / lower[column][column];
      }
    }
    return lower;
  }

  /** Solution of M x = right for a symmetric positive definite M. */
  static double[] solved(double[][] matrix, double[] right) {
    double[][] lower = lowerTriangle(matrix);
    int size = right.length;
    double[] solution = right.clone();
    for (int row = 0; row < size; row++) {
      for (int inner = 0; inner < row; inner++) {
        solution[row] -= lower[row][inner] * solution[inner];
      }
      solution[row] /= lower[row][row];
    }
    for (int row = size - 1; row >= 0; row--) {
      for (int inner = row + 1; inner < size; inner++) {
        solution[row] -= lower[inner][row] * solution[inner];
      }
      solution[row] /= lower[row][row];
    }
    return solution;
  }

  /** Inverse of a symmetric positive definite matrix. */
  static double[][] inverse(double[][] matrix) {
    int size = matrix.length;
    double[][] inverse = new double[size][];
    for (int column = 0; column < size; column++) {
      double[] unit = new double[size];
      unit[column] = 1;
      inverse[column] = solved(matrix, unit);
    }
    return transposed(inverse);
  }
}
