package leafturn.model.weather.generator;

import java.util.Arrays;

/** A quantity's course through the year: a mean and waves of one year, half a year and so on. */
final class SeasonalCycle {
  private final double[] byYearDay;

  private SeasonalCycle(double[] byYearDay) {
    this.byYearDay = byYearDay;
  }

  /** The same on every day. */
  static SeasonalCycle flat(double value) {
    double[] byYearDay = new double[YearDay.COUNT];
    Arrays.fill(byYearDay, value);
    return new SeasonalCycle(byYearDay);
  }

  /**
   * Fitted by least squares.
   *
   * @param yearDays day of the year of each value, see {@link YearDay}
   * @param values as many
   * @param count number of values to use
   * @param waves number of waves, 0 or more
   */
  static SeasonalCycle fitted(int[] yearDays, double[] values, int count, int waves) {
    int terms = 1 + 2 * waves;
    double[][] normal = new double[terms][terms];
    double[] right = new double[terms];
    for (int value = 0; value < count; value++) {
      double[] basis = basis(yearDays[value], waves);
      for (int row = 0; row < terms; row++) {
        right[row] += basis[row] * values[value];
        for (int column = 0; column < terms; column++) {
          normal[row][column] += basis[row] * basis[column];
        }
      }
    }
    double[] weights = Matrix.solved(normal, right);
    double[] byYearDay = new double[YearDay.COUNT];
    for (int day = 0; day < byYearDay.length; day++) {
      double[] basis = basis(day, waves);
      for (int term = 0; term < terms; term++) {
        byYearDay[day] += weights[term] * basis[term];
      }
    }
    return new SeasonalCycle(byYearDay);
  }

  private static double[] basis(int yearDay, int waves) {
    double[] basis = new double[1 + 2 * waves];
    basis[0] = 1;
    for (int wave = 1; wave <= waves; wave++) {
      double angle = 2 * Math.PI * wave * (yearDay + 0.5) / YearDay.COUNT;
      basis[2 * wave - 1] = Math.cos(angle);
      basis[2 * wave] = Math.sin(angle);
    }
    return basis;
  }

  double at(int yearDay) {
    return byYearDay[yearDay];
  }

  /** Square root of this cycle of variances, and of a least variance where it falls below that. */
  SeasonalCycle root(double least) {
    double[] roots = new double[byYearDay.length];
    for (int day = 0; day < roots.length; day++) {
      roots[day] = Math.sqrt(Math.max(least, byYearDay[day]));
    }
    return new SeasonalCycle(roots);
  }

  SeasonalCycle times(double factor) {
    double[] scaled = new double[byYearDay.length];
    for (int day = 0; day < scaled.length; day++) {
      scaled[day] = factor * byYearDay[day];
    }
    return new SeasonalCycle(scaled);
  }
}
