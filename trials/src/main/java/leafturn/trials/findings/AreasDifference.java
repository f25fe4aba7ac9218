package leafturn.trials.findings;

import java.util.Arrays;
import java.util.stream.IntStream;
import leafturn.trials.analysis.numeric.Tails;
import leafturn.trials.analysis.paired.PairedDifference.Interval;
import leafturn.trials.analysis.paired.SeasonSummary;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * One yard split once: what its two areas differed by and how well they were measured. Dates and
 * cores repeat the measuring, not the treatment, so there is no test of a treatment.
 *
 * @param difference first less second, on the scale of the analysis
 * @param samplingError standard error of the season's summary, from the scatter of the dates'
 *     differences about their mean, or about their line where the summary is a slope; NaN with too
 *     few dates, or where all of them say the same
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
  static @Nullable AreasDifference of(
      Contrast contrast, Outcome outcome, SeasonTable table, PairedSeason pairs) {
    if (pairs.units().isEmpty()) {
      return null;
    }
    String unit = pairs.units().get(0);
    double[] first = table.values()[table.plotWith(unit, contrast.first())];
    double[] second = table.values()[table.plotWith(unit, contrast.second())];
    int[] shared =
        IntStream.range(0, first.length)
            .filter(date -> !Double.isNaN(first[date]) && !Double.isNaN(second[date]))
            .toArray();
    double difference = pairs.differences()[0];
    int dates = shared.length;
    SeasonSummary summary = PlotSummaries.summary(outcome, table.dates().size());
    double[] days = Arrays.stream(shared).mapToDouble(date -> table.days()[date]).toArray();
    double[] byDate =
        Arrays.stream(shared).mapToDouble(date -> first[date] - second[date]).toArray();
    double slope = summary == SeasonSummary.SLOPE ? difference : 0;
    int df = dates - (summary == SeasonSummary.SLOPE ? 2 : 1);
    if (df < 1) {
      return new AreasDifference(contrast, difference, Double.NaN, 0, null, dates);
    }
    double[] scatter =
        IntStream.range(0, dates).mapToDouble(i -> byDate[i] - slope * days[i]).toArray();
    double mean = Arrays.stream(scatter).average().orElse(Double.NaN);
    double squares = Arrays.stream(scatter).map(each -> (each - mean) * (each - mean)).sum();
    double deviation = Math.sqrt(squares / df);
    double size = Arrays.stream(first).filter(Double::isFinite).map(Math::abs).max().orElse(0);
    if (deviation <= NOTHING * Math.max(size, Math.abs(mean))) {
      return new AreasDifference(contrast, difference, Double.NaN, 0, null, dates);
    }
    double error =
        deviation * Math.sqrt(Arrays.stream(summary.weights(days)).map(w -> w * w).sum());
    double reach = error * Tails.tQuantileTwoSided(Effect.ALPHA, df);
    return new AreasDifference(
        contrast,
        difference,
        error,
        df,
        new Interval(difference - reach, difference + reach),
        dates);
  }
}
