package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.paired.SignFlipTest;
import leafturn.trials.design.Contrast;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.jspecify.annotations.Nullable;

/**
 * Layouts in which two arms may have changed places within each unit by chance alone: on plots, or
 * with all the plots of a whole strip. Each change turns the sign of the unit's difference.
 *
 * @param differences first arm less second, of each unit, or of units that one coin decided
 *     together
 */
record SwappedArms(double[] differences) {

  /**
   * @param together units whose arms one coin decided; a unit in none of them has its own
   */
  static SwappedArms of(
      Contrast contrast, SeasonTable table, double[] values, List<List<String>> together) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (String unit : table.units()) {
      double difference =
          mean(contrast.first(), unit, table, values)
              - mean(contrast.second(), unit, table, values);
      if (!Double.isNaN(difference)) {
        sums.merge(coinOf(unit, together), difference, Double::sum);
      }
    }
    return new SwappedArms(sums.values().stream().mapToDouble(Double::doubleValue).toArray());
  }

  private static String coinOf(String unit, List<List<String>> together) {
    return together.stream()
        .filter(set -> set.contains(unit))
        .map(set -> set.get(0))
        .findFirst()
        .orElse(unit);
  }

  private static double mean(String arm, String unit, SeasonTable table, double[] values) {
    List<Double> own = new ArrayList<>();
    for (int plot : table.plotsOf(unit)) {
      if (table.plots().get(plot).arm().equals(arm) && !Double.isNaN(values[plot])) {
        own.add(values[plot]);
      }
    }
    return own.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
  }

  /** The test over all changes of places, or over a sample of them where they are too many. */
  @Nullable RandomisationTest test(long seed) {
    int coins = differences.length;
    if (coins == 0) {
      return null;
    }
    if (coins > SignFlipTest.MOST_YARDS) {
      return sampled(RandomSource.XO_RO_SHI_RO_128_PP.create(seed));
    }
    return new RandomisationTest(
        SignFlipTest.p(differences), 1L << coins, SignFlipTest.smallestP(coins), false, false);
  }

  private RandomisationTest sampled(UniformRandomProvider chance) {
    double own = 0;
    double size = 0;
    for (double difference : differences) {
      own += difference;
      size += Math.abs(difference);
    }
    double bound = Math.abs(own) - RandomisationTest.SAME * size;
    long extreme = 0;
    for (int layout = 1; layout < RandomisationTest.IN_SAMPLE; layout++) {
      double sum = 0;
      for (double difference : differences) {
        sum += chance.nextBoolean() ? difference : -difference;
      }
      extreme += Math.abs(sum) >= bound ? 1 : 0;
    }
    return RandomisationTest.ofSample(extreme);
  }
}
