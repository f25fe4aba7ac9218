package leafturn.model.weather.generator;

/**
 * Correlations of standardised deviations, over the days that have both.
 *
 * @param sameDay M0, {@code [quantity][quantity]}
 * @param dayBefore M1, {@code [today's quantity][yesterday's quantity]}
 */
record Correlations(double[][] sameDay, double[][] dayBefore) {

  /**
   * @param residuals {@code [quantity][place]}, NaN where not measured
   * @param days number of each place's day, rising; neighbours follow one another by 1
   */
  static Correlations of(double[][] residuals, int[] days) {
    int size = residuals.length;
    double[][] sameDay = new double[size][size];
    double[][] dayBefore = new double[size][size];
    for (int row = 0; row < size; row++) {
      for (int column = 0; column < size; column++) {
        sameDay[row][column] =
            row == column ? 1 : correlation(residuals[row], residuals[column], days, 0);
        dayBefore[row][column] = correlation(residuals[row], residuals[column], days, 1);
      }
    }
    return new Correlations(sameDay, dayBefore);
  }

  private static double correlation(double[] today, double[] other, int[] days, int lag) {
    double products = 0;
    double todays = 0;
    double others = 0;
    for (int place = lag; place < days.length; place++) {
      double one = today[place];
      double two = other[place - lag];
      if (days[place] - days[place - lag] == lag && !Double.isNaN(one) && !Double.isNaN(two)) {
        products += one * two;
        todays += one * one;
        others += two * two;
      }
    }
    return todays > 0 && others > 0 ? products / Math.sqrt(todays * others) : 0;
  }

  /**
   * Puts the standard correlations in place of those of the first quantities; the others keep only
   * what binds them to their own day before.
   */
  void standardFor(int count) {
    double[][] same = Residuals.standardSameDay(count);
    double[][] before = Residuals.standardDayBefore(count);
    for (int row = 0; row < sameDay.length; row++) {
      for (int column = 0; column < sameDay.length; column++) {
        boolean known = row < count && column < count;
        if (known) {
          sameDay[row][column] = same[row][column];
          dayBefore[row][column] = before[row][column];
        } else if (row != column) {
          sameDay[row][column] = 0;
          dayBefore[row][column] = 0;
        }
      }
    }
  }
}
