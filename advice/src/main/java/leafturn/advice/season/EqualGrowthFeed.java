package leafturn.advice.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import leafturn.advice.call.Spread;
import org.jspecify.annotations.Nullable;

/**
 * The yearly N that makes a programme grow as much as the lawn does now: searched for on the mean
 * of the possible seasons, then told for each of them by the straight line through the two feeds
 * around it.
 *
 * @param growthOf leaf growth of each possible season at a yearly N, both in g/m2
 * @param wanted growth to reach in each of them, g/m2
 */
record EqualGrowthFeed(DoubleFunction<double[]> growthOf, double[] wanted) {
  /** Highest feed tried, g N/m2 a year. */
  static final double MOST_G_PER_M2 = 40;

  private static final double CLOSE_ENOUGH_FRACTION = 0.01;
  private static final int MOST_STEPS = 3;

  private record Trial(double nGPerM2, double[] growth, double missing) {}

  /**
   * Needed N, g/m2 a year, or null when not even {@link #MOST_G_PER_M2} is enough.
   *
   * @param givenGPerM2 what the programme gives
   * @param growthAtGiven growth at that
   */
  @Nullable Spread from(double givenGPerM2, double[] growthAtGiven) {
    List<Trial> trials = new ArrayList<>();
    Trial low = trial(givenGPerM2, growthAtGiven);
    Trial high = low;
    trials.add(low);
    if (low.missing <= 0 && givenGPerM2 > 0) {
      low = tried(0, trials);
    }
    while (high.missing > 0 && high.nGPerM2 < MOST_G_PER_M2) {
      low = high;
      high = tried(Math.min(MOST_G_PER_M2, Math.max(10, 2 * high.nGPerM2)), trials);
    }
    if (high.missing > 0) {
      return null;
    }
    if (low.missing > 0) {
      close(low, high, trials);
    }
    trials.sort(Comparator.comparingDouble(Trial::nGPerM2));
    return spread(trials);
  }

  /** Narrows the bracket by straight lines until the mean is close enough. */
  private void close(Trial from, Trial to, List<Trial> trials) {
    Trial low = from;
    Trial high = to;
    for (int step = 0; step < MOST_STEPS; step++) {
      if (Math.min(low.missing, -high.missing) < CLOSE_ENOUGH_FRACTION * mean(wanted)) {
        return;
      }
      double share = low.missing / (low.missing - high.missing);
      Trial next = tried(low.nGPerM2 + share * (high.nGPerM2 - low.nGPerM2), trials);
      if (next.missing > 0) {
        low = next;
      } else {
        high = next;
      }
    }
  }

  private Trial tried(double nGPerM2, List<Trial> trials) {
    Trial trial = trial(nGPerM2, growthOf.apply(nGPerM2));
    trials.add(trial);
    return trial;
  }

  private Trial trial(double nGPerM2, double[] growth) {
    return new Trial(nGPerM2, growth, mean(wanted) - mean(growth));
  }

  private Spread spread(List<Trial> trials) {
    double[] needed = new double[wanted.length];
    for (int season = 0; season < wanted.length; season++) {
      needed[season] = needed(trials, season);
    }
    return Spread.of(needed);
  }

  /** On the line through the two feeds around the wanted growth, or through the nearest two. */
  private double needed(List<Trial> rising, int season) {
    if (rising.size() == 1) {
      return rising.get(0).nGPerM2;
    }
    int above = 1;
    while (above < rising.size() - 1 && rising.get(above).growth[season] < wanted[season]) {
      above++;
    }
    Trial low = rising.get(above - 1);
    Trial high = rising.get(above);
    double gained = high.growth[season] - low.growth[season];
    if (!(gained > 0)) {
      return wanted[season] > low.growth[season] ? high.nGPerM2 : low.nGPerM2;
    }
    double share = (wanted[season] - low.growth[season]) / gained;
    double nGPerM2 = low.nGPerM2 + share * (high.nGPerM2 - low.nGPerM2);
    return Math.min(MOST_G_PER_M2, Math.max(0, nGPerM2));
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
