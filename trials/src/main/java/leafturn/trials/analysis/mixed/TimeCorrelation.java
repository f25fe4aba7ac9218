package leafturn.trials.analysis.mixed;

import java.util.Arrays;
import leafturn.trials.analysis.data.Times;
import leafturn.trials.analysis.model.OverTime;
import org.jspecify.annotations.Nullable;

/**
 * The covariance of the errors of one unit between the times of the trial, relative to the variance
 * at the first time, with free parameters that may take any value.
 */
abstract class TimeCorrelation {
  /** Independent errors: nothing to estimate. */
  static final TimeCorrelation NONE =
      new TimeCorrelation() {
        @Override
        int parameters() {
          return 0;
        }

        @Override
        double[][] covariance(double[] free) {
          return new double[][] {{1}};
        }

        @Override
        double[][][] derivatives(double[] free) {
          return new double[0][][];
        }
      };

  /** The structure of a model with dates. */
  static TimeCorrelation of(OverTime overTime, Times times) {
    int count = times.labels().size();
    return switch (overTime.correlation()) {
      case COMPOUND_SYMMETRY -> new CompoundSymmetry(count);
      case AR1 -> PowerCorrelation.ofPositions(count);
      case CAR1 -> PowerCorrelation.ofTimes(times.values());
      case HETEROGENEOUS_AR1 -> new HeterogeneousCorrelation(count);
      case UNSTRUCTURED -> new UnstructuredCovariance(count);
    };
  }

  /** How many free parameters there are. */
  abstract int parameters();

  /** {@code [time][time]}. */
  abstract double[][] covariance(double[] free);

  /** {@code [parameter][time][time]}. */
  abstract double[][][] derivatives(double[] free);

  /** Where a search may begin. */
  double[][] starts() {
    return new double[][] {new double[parameters()]};
  }

  /** The one correlation of structures that have one. */
  @Nullable Double rho(double[] free) {
    return null;
  }

  /** Standard deviations relative to the first time, if they differ. */
  double @Nullable [] sdRatios(double[] free) {
    return null;
  }

  /** At how many times the errors have a variance of their own; 0 where all have the same. */
  int spreads() {
    return 0;
  }

  /** Whether the correlation lies at the end of what is possible. */
  boolean isAtLimit(double[] free) {
    Double rho = rho(free);
    return rho != null && Math.abs(rho) > 1 - 1e-7;
  }

  static double[][] filled(int size, double value) {
    double[][] matrix = new double[size][size];
    for (double[] row : matrix) {
      Arrays.fill(row, value);
    }
    return matrix;
  }
}
