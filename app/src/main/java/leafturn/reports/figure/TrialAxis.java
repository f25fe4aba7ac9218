package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;

/**
 * The upright axis of a trial's figure: plain values, or logarithms that are read as ratios or
 * amounts.
 *
 * @param low least value on the scale of the analysis
 * @param high greatest
 * @param log whether the values are natural logarithms
 */
record TrialAxis(double low, double high, boolean log) {
  private static final int STEPS = 5;
  private static final double[] ROUND = {1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9};
  private static final double[] NEAR_ONE = {0.7, 0.8, 0.9, 0.95, 1, 1.05, 1.1, 1.2, 1.3, 1.4};

  /** A mark on the axis: its value on the scale of the analysis and its words. */
  record Tick(double value, String words) {}

  /** An axis that has room for some values. */
  static TrialAxis over(List<Double> values, boolean log) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      if (Double.isFinite(value)) {
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    if (!(high >= low)) {
      return new TrialAxis(0, 1, log);
    }
    double air = high > low ? 0.06 * (high - low) : Math.max(1e-9, 0.1 * Math.abs(high));
    return new TrialAxis(low - air, high + air, log);
  }

  Scale scale(double bottomPx, double topPx) {
    return new Scale(low, high, bottomPx, topPx);
  }

  List<Tick> ticks() {
    return log ? ratios() : steps();
  }

  private List<Tick> steps() {
    double step = RoundSteps.atMost((high - low) / STEPS * 1.6);
    int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    List<Tick> ticks = new ArrayList<>();
    for (long i = (long) Math.ceil(low / step); i * step <= high; i++) {
      ticks.add(new Tick(i * step, DisplayNumber.decimals(i * step, Math.min(15, decimals))));
    }
    return ticks;
  }

  private List<Tick> ratios() {
    List<Tick> ticks = new ArrayList<>();
    for (double value : high - low < 0.8 && low < 0.35 && high > -0.36 ? NEAR_ONE : round()) {
      if (Math.log(value) >= low && Math.log(value) <= high) {
        ticks.add(new Tick(Math.log(value), DisplayNumber.plain(value)));
      }
    }
    return ticks.size() < 2 ? ends() : ticks;
  }

  private double[] round() {
    List<Double> values = new ArrayList<>();
    double[] mantissas = high - low > 2 ? new double[] {1, 2, 5} : ROUND;
    int from = (int) Math.floor(low / Math.log(10));
    int to = (int) Math.ceil(high / Math.log(10));
    for (int power = from; power <= to && power - from < 40; power++) {
      for (double mantissa : mantissas) {
        values.add(Double.parseDouble(DisplayNumber.plain(mantissa) + "e" + power));
      }
    }
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private List<Tick> ends() {
    List<Tick> ticks = new ArrayList<>();
    for (int i = 0; i <= 3; i++) {
      double value = low + (0.1 + 0.8 * i / 3) * (high - low);
      ticks.add(new Tick(value, DisplayNumber.significant(Math.exp(value), 3)));
    }
    return ticks;
  }
}
