package leafturn.trials.analysis.paired;

import java.util.Arrays;
import java.util.Locale;
import leafturn.trials.analysis.data.TrialFaultException;

/** One number for the season of a half yard, chosen before the trial begins. */
public enum SeasonSummary {
  /** The mean over days, by trapezoids between dates. */
  MEAN {
    @Override
    double value(double[] days, double[] values) {
      double area = 0;
      for (int i = 1; i < days.length; i++) {
        area += (days[i] - days[i - 1]) * (values[i] + values[i - 1]) / 2;
      }
      return area / (days[days.length - 1] - days[0]);
    }
  },
  /** The rise per day, by least squares. */
  SLOPE {
    @Override
    double value(double[] days, double[] values) {
      double meanDay = Arrays.stream(days).average().orElseThrow();
      double top = 0;
      double bottom = 0;
      for (int i = 0; i < days.length; i++) {
        top += (days[i] - meanDay) * values[i];
        bottom += (days[i] - meanDay) * (days[i] - meanDay);
      }
      return top / bottom;
    }
  },
  /** The value on the last date. */
  LAST {
    @Override
    double value(double[] days, double[] values) {
      return values[values.length - 1];
    }
  };

  abstract double value(double[] days, double[] values);

  /**
   * The summary of one half.
   *
   * @param days of the dates, rising
   * @param values of the half on each date, none missing
   * @throws TrialFaultException where dates are out of order or too few
   * @source common practice, no source
   */
  public double of(double[] days, double[] values) {
    if (days.length != values.length || days.length < (this == LAST ? 1 : 2)) {
      throw new TrialFaultException(
          "A season's %s needs a value on each of at least %d dates; there are %d dates and %d values."
              .formatted(
                  name().toLowerCase(Locale.ROOT),
                  this == LAST ? 1 : 2,
                  days.length,
                  values.length));
    }
    for (int i = 1; i < days.length; i++) {
      if (!(days[i] > days[i - 1])) {
        throw new TrialFaultException(
            "Dates are out of order: day %s follows day %s; sort them, one value for each."
                .formatted(days[i], days[i - 1]));
      }
    }
    return value(days, values);
  }

  /**
   * What each date counts in the summary, which is a sum of the dates' values.
   *
   * @param days of the dates, rising
   * @throws TrialFaultException where dates are out of order or too few
   * @source common practice, no source
   */
  public double[] weights(double[] days) {
    double[] weights = new double[days.length];
    for (int i = 0; i < days.length; i++) {
      double[] one = new double[days.length];
      one[i] = 1;
      weights[i] = of(days, one);
    }
    return weights;
  }
}
