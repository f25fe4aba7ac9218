package leafturn.trials.analysis.censored;

import java.util.Arrays;
import leafturn.trials.analysis.data.Response;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.numeric.Matrices;
import leafturn.trials.analysis.numeric.NewtonMinimum;
import leafturn.trials.analysis.numeric.Tails;

/**
 * A regression in which some values are known only to lie below their detection limit, by maximum
 * likelihood: independent plots, normal errors on the scale of the response (take logarithms first
 * for lognormal data).
 *
 * @param coefficients of the columns
 * @param scale standard deviation of the errors
 * @param covariance of the coefficients and, last, the logarithm of the scale
 * @param logLikelihood on the scale of the response
 * @source tobin1958
 */
public record CensoredRegression(
    double[] coefficients, double scale, double[][] covariance, double logLikelihood) {
  private static final double HALF_LOG_TWO_PI = 0.5 * Math.log(2 * Math.PI);
  private static final double MOST_CENSORED = 0.7;

  /**
   * Fits a regression.
   *
   * @param rows of independent columns, a mean among them if there is one
   * @throws TrialFaultException where more than 70 % lie below detection
   */
  public static CensoredRegression of(Response response, double[][] rows) {
    int count = response.countBelowDetection();
    if (count > MOST_CENSORED * rows.length) {
      throw new TrialFaultException(
          "%d of %d values of %s lie below detection; above 70 %% only the proportion above the limit can be compared."
              .formatted(count, rows.length, response.name()));
    }
    NewtonMinimum.Function minusLog = position -> point(response, rows, position);
    NewtonMinimum.Point best = NewtonMinimum.from(start(response, rows), minusLog, 1e-9);
    double[][] covariance =
        Matrices.inverseOfSymmetric(NewtonMinimum.hessian(best, minusLog, 1e-5));
    int columns = rows[0].length;
    return new CensoredRegression(
        Arrays.copyOf(best.position(), columns),
        Math.exp(best.position()[columns]),
        covariance,
        -best.value());
  }

  /** Of the coefficients, then of the logarithm of the scale. */
  public double[] standardErrors() {
    double[] errors = new double[covariance.length];
    Arrays.setAll(errors, k -> Math.sqrt(covariance[k][k]));
    return errors;
  }

  /** Least squares at the limits, with its spread. */
  private static double[] start(Response response, double[][] rows) {
    double[][] cross = Matrices.product(Matrices.transpose(rows), rows);
    double[] moments = Matrices.product(Matrices.transpose(rows), response.values());
    double[] start =
        Arrays.copyOf(
            Matrices.product(Matrices.inverseOfSymmetric(cross), moments), rows[0].length + 1);
    double squares = 0;
    for (int i = 0; i < rows.length; i++) {
      double rest = response.values()[i] - mean(rows[i], start);
      squares += rest * rest;
    }
    start[rows[0].length] = 0.5 * Math.log(Math.max(squares / rows.length, 1e-12));
    return start;
  }

  private static double mean(double[] row, double[] position) {
    double mean = 0;
    for (int k = 0; k < row.length; k++) {
      mean += row[k] * position[k];
    }
    return mean;
  }

  /** Minus the log likelihood; the last parameter is the logarithm of the scale. */
  private static NewtonMinimum.Point point(Response response, double[][] rows, double[] position) {
    int columns = rows[0].length;
    double logScale = position[columns];
    double scale = Math.exp(logScale);
    double value = 0;
    double[] gradient = new double[position.length];
    for (int i = 0; i < rows.length; i++) {
      double z = (response.values()[i] - mean(rows[i], position)) / scale;
      double slope;
      if (response.belowDetection()[i]) {
        double below = Tails.normalBelow(z);
        value -= Math.log(below);
        slope = Math.exp(-z * z / 2 - HALF_LOG_TWO_PI) / below;
        gradient[columns] += slope * z;
      } else {
        value += z * z / 2 + HALF_LOG_TWO_PI + logScale;
        slope = -z;
        gradient[columns] += 1 - z * z;
      }
      for (int k = 0; k < columns; k++) {
        gradient[k] += slope * rows[i][k] / scale;
      }
    }
    boolean known = Double.isFinite(value);
    return new NewtonMinimum.Point(position, known ? value : Double.POSITIVE_INFINITY, gradient);
  }
}
