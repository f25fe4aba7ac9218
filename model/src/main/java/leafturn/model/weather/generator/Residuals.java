package leafturn.model.weather.generator;

import java.util.Arrays;

/**
 * Day-to-day deviations of several quantities from what their season and a wet or dry day would
 * have, each in its own standard deviations: today's are A times yesterday's plus B times
 * independent normal numbers.
 */
public final class Residuals {
  /** Correlations of Tmax, Tmin and radiation on the same day. */
  private static final double[][] DEFAULT_SAME_DAY = {
    {1, 0.633, 0.186}, {0.633, 1, -0.193}, {0.186, -0.193, 1}
  };

  /** Correlations of today's (row) with yesterday's (column). */
  private static final double[][] DEFAULT_DAY_BEFORE = {
    {0.621, 0.445, 0.087}, {0.563, 0.674, -0.100}, {0.015, -0.091, 0.251}
  };

  private final double[][] memory;
  private final double[][] innovation;

  private Residuals(double[][] memory, double[][] innovation) {
    this.memory = memory;
    this.innovation = innovation;
  }

  /**
   * From correlations: A = M1 M0^-1, B the lower triangle of M0 - A M1'.
   *
   * @param sameDay M0, {@code [quantity][quantity]}, symmetric with ones on its diagonal
   * @param dayBefore M1, {@code [today's quantity][yesterday's quantity]}
   * @throws ArithmeticException when no series can have these correlations
   * @source richardson1981
   */
  public static Residuals of(double[][] sameDay, double[][] dayBefore) {
    double[][] memory = Matrix.times(dayBefore, Matrix.inverse(sameDay));
    double[][] left = Matrix.plus(sameDay, Matrix.times(memory, Matrix.transposed(dayBefore)), -1);
    return new Residuals(memory, Matrix.lowerTriangle(left));
  }

  /**
   * The correlations of Tmax, Tmin and radiation, in this order, that Richardson found usable over
   * much of the United States, for records too short to give their own.
   *
   * @param quantities 2 for the temperatures alone, or 3
   * @source richardson1984
   */
  public static Residuals standard(int quantities) {
    return of(corner(DEFAULT_SAME_DAY, quantities), corner(DEFAULT_DAY_BEFORE, quantities));
  }

  static double[][] standardSameDay(int quantities) {
    return corner(DEFAULT_SAME_DAY, quantities);
  }

  static double[][] standardDayBefore(int quantities) {
    return corner(DEFAULT_DAY_BEFORE, quantities);
  }

  private static double[][] corner(double[][] matrix, int size) {
    double[][] corner = new double[size][];
    for (int row = 0; row < size; row++) {
      corner[row] = Arrays.copyOf(matrix[row], size);
    }
    return corner;
  }

  /** A, {@code [today's quantity][yesterday's quantity]}. */
  public double[][] memory() {
    return copy(memory);
  }

  /** B, lower triangle. */
  public double[][] innovation() {
    return copy(innovation);
  }

  /**
   * Covariance that a long series settles to: the sum of A^n B B' A'^n.
   *
   * @source richardson1981
   */
  public double[][] stationary() {
    double[][] noise = Matrix.times(innovation, Matrix.transposed(innovation));
    double[][] covariance = noise;
    for (int day = 0; day < 1000; day++) {
      covariance =
          Matrix.plus(
              Matrix.times(Matrix.times(memory, covariance), Matrix.transposed(memory)), noise, 1);
    }
    return covariance;
  }

  int quantities() {
    return memory.length;
  }

  /**
   * Today's deviations.
   *
   * @param yesterday one per quantity
   * @param normal independent normal numbers, one per quantity
   * @param today receives the result; another array than yesterday's
   */
  void step(double[] yesterday, double[] normal, double[] today) {
    for (int row = 0; row < today.length; row++) {
      double sum = 0;
      for (int column = 0; column < today.length; column++) {
        sum += memory[row][column] * yesterday[column];
      }
      for (int column = 0; column <= row; column++) {
        sum += innovation[row][column] * normal[column];
      }
      today[row] = sum;
    }
  }

  private static double[][] copy(double[][] matrix) {
    double[][] copy = new double[matrix.length][];
    for (int row = 0; row < copy.length; row++) {
      copy[row] = matrix[row].clone();
    }
    return copy;
  }
}
