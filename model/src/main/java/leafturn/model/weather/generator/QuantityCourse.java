package leafturn.model.weather.generator;

import java.util.Arrays;
import leafturn.model.weather.WeatherSeries.Quantity;

/**
 * A quantity's mean and standard deviation through the year, on dry and on wet days. Wind is held
 * as its square root, which spreads more evenly about its mean.
 */
final class QuantityCourse {
  /** Days of one kind that a course of their own needs. */
  private static final int FEWEST_DAYS = 60;

  private static final double LEAST_VARIANCE_SHARE = 0.1;

  /** Deviations, in standard deviations, beyond which nothing is generated. */
  private static final double FARTHEST = 5;

  private final Quantity quantity;
  private final SeasonalCycle[] means;
  private final SeasonalCycle[] deviations;

  private QuantityCourse(Quantity quantity, SeasonalCycle[] means, SeasonalCycle[] deviations) {
    this.quantity = quantity;
    this.means = means;
    this.deviations = deviations;
  }

  /** The days that a course is fitted to: values without NaN, all of one length. */
  record Days(int[] yearDays, boolean[] wet, double[] values) {
    private Days only(boolean wetOnes) {
      int count = 0;
      int[] kept = new int[yearDays.length];
      double[] keptValues = new double[yearDays.length];
      for (int day = 0; day < yearDays.length; day++) {
        if (wet[day] == wetOnes) {
          kept[count] = yearDays[day];
          keptValues[count++] = values[day];
        }
      }
      return new Days(Arrays.copyOf(kept, count), new boolean[0], Arrays.copyOf(keptValues, count));
    }

    private int count() {
      return values.length;
    }
  }

  static QuantityCourse fitted(Quantity quantity, Days days, int meanWaves, int spreadWaves) {
    double[] scaled = Arrays.stream(days.values()).map(v -> scaled(quantity, v)).toArray();
    Days all = new Days(days.yearDays(), days.wet(), scaled);
    SeasonalCycle[] means = new SeasonalCycle[2];
    SeasonalCycle[] deviations = new SeasonalCycle[2];
    for (int kind = 0; kind < 2; kind++) {
      Days own = all.only(kind == 1);
      Days used = own.count() >= FEWEST_DAYS ? own : all;
      means[kind] = SeasonalCycle.fitted(used.yearDays(), used.values(), used.count(), meanWaves);
      deviations[kind] = deviations(used, means[kind], spreadWaves);
    }
    return new QuantityCourse(quantity, means, deviations);
  }

  private static SeasonalCycle deviations(Days days, SeasonalCycle mean, int waves) {
    double[] squares = new double[days.count()];
    for (int day = 0; day < squares.length; day++) {
      double apart = days.values()[day] - mean.at(days.yearDays()[day]);
      squares[day] = apart * apart;
    }
    double variance = Math.max(1e-6, Arrays.stream(squares).average().orElse(0));
    SeasonalCycle deviation =
        SeasonalCycle.fitted(days.yearDays(), squares, squares.length, waves)
            .root(LEAST_VARIANCE_SHARE * variance);
    double standardised = 0;
    for (int day = 0; day < squares.length; day++) {
      double sd = deviation.at(days.yearDays()[day]);
      standardised += squares[day] / (sd * sd) / squares.length;
    }
    return deviation.times(Math.sqrt(Math.max(1e-6, standardised)));
  }

  Quantity quantity() {
    return quantity;
  }

  /** Deviation of a value in standard deviations; 0 where it was not measured. */
  double residual(double value, int yearDay, boolean wet) {
    if (Double.isNaN(value)) {
      return 0;
    }
    int kind = wet ? 1 : 0;
    return (scaled(quantity, value) - means[kind].at(yearDay)) / deviations[kind].at(yearDay);
  }

  /** The value with a deviation, within what the quantity can be. */
  double value(double residual, int yearDay, boolean wet) {
    int kind = wet ? 1 : 0;
    double kept = Math.max(-FARTHEST, Math.min(FARTHEST, residual));
    double scaled = means[kind].at(yearDay) + kept * deviations[kind].at(yearDay);
    return switch (quantity) {
      case WIND_M_PER_S -> scaled > 0 ? scaled * scaled : 0;
      case RAIN_MM, RADIATION_MJ_PER_M2 -> Math.max(0, scaled);
      case HUMIDITY_MAXIMUM_PERCENT, HUMIDITY_MINIMUM_PERCENT -> Math.max(0, Math.min(100, scaled));
      case MINIMUM_C, MAXIMUM_C, DEW_POINT_C -> Math.max(-90, Math.min(60, scaled));
    };
  }

  /** Mean on the scale of the fit. */
  double mean(int yearDay, boolean wet) {
    return means[wet ? 1 : 0].at(yearDay);
  }

  /** Standard deviation on the scale of the fit. */
  double deviation(int yearDay, boolean wet) {
    return deviations[wet ? 1 : 0].at(yearDay);
  }

  private static double scaled(Quantity quantity, double value) {
    return quantity == Quantity.WIND_M_PER_S ? Math.sqrt(value) : value;
  }
}
