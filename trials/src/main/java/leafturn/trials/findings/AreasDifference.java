package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.numeric.Tails;
import leafturn.trials.analysis.paired.PairedDifference.Interval;
import leafturn.trials.design.Contrast;
import org.jspecify.annotations.Nullable;

/**
 * One yard split once: what its two areas differed by and how well they were measured. Dates and
 * cores repeat the measuring, not the treatment, so there is no test of a treatment.
 *
 * @param difference first less second, on the scale of the analysis
 * @param samplingError standard error from the dates; NaN with a single date, or where all dates
 *     say the same
 * @param df of the sampling error
 * @param interval of 95 % by the sampling error alone; null where that cannot be told
 * @param dates on which both areas were read
 * @source hurlbert1984
 */
public record AreasDifference(
    Contrast contrast,
    double difference,
    double samplingError,
    double df,
    @Nullable Interval interval,
    int dates) {

  /** A share of the values that is rounding alone. */
  private static final double NOTHING = 1e-9;

  /** The difference of a unit's two plots; null where they share no date. */
  static @Nullable AreasDifference of(Contrast contrast, SeasonTable table, PairedSeason pairs) {
    if (pairs.units().isEmpty()) {
      return null;
    }
    String unit = pairs.units().get(0);
    double[] first = table.values()[table.plotWith(unit, contrast.first())];
    double[] second = table.values()[table.plotWith(unit, contrast.second())];
    List<Double> byDate = new ArrayList<>();
    for (int i = 0; i < first.length; i++) {
      if (!Double.isNaN(first[i]) && !Double.isNaN(second[i])) {
        byDate.add(first[i] - second[i]);
      }
    }
    double difference = pairs.differences()[0];
    int dates = byDate.size();
    if (dates < 2) {
      return new AreasDifference(contrast, difference, Double.NaN, 0, null, dates);
    }
    double mean = byDate.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
    double squares = byDate.stream().mapToDouble(each -> (each - mean) * (each - mean)).sum();
    double error = Math.sqrt(squares / (dates - 1) / dates);
    double size = Arrays.stream(first).filter(Double::isFinite).map(Math::abs).max().orElse(0);
    if (error <= NOTHING * Math.max(size, Math.abs(mean))) {
      return new AreasDifference(contrast, difference, Double.NaN, 0, null, dates);
    }
    double reach = error * Tails.tQuantileTwoSided(Effect.ALPHA, dates - 1);
    return new AreasDifference(
        contrast,
        difference,
        error,
        dates - 1,
        new Interval(difference - reach, difference + reach),
        dates);
  }
}
