package leafturn.advice.call;

import java.util.List;
import java.util.Map;
import leafturn.model.Parameter;
import leafturn.model.ParameterTable;
import leafturn.model.Parameters;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LawnEquations;

/**
 * How much faster or slower a lawn grows than its description says: a factor on the ceiling of leaf
 * growth, known as a normal distribution of its logarithm. Before anything was measured it is 1,
 * give or take the range of the ceiling in the parameter table, which is read as nine draws out of
 * ten (assumed). Each logged height says how much grew since the last logged cut against the
 * model's growth, each taken as 5 mm at least; one such ratio is taken to be off by a standard
 * deviation of 0.35 in its logarithm (assumed: a few millimetres of reading on some two centimetres
 * of growth, and weather that differs from the station's). The estimate is the usual mean of both,
 * weighed by their precision, so that few heights move it little.
 *
 * @param logMean mean of the logarithm
 * @param logSd standard deviation of the logarithm
 */
record GrowthFactor(double logMean, double logSd) {
  /** Standard deviation of the logarithm of one measured ratio; assumed. */
  static final double RATIO_LOG_SD = 0.35;

  /** The parameter that the factor is on. */
  static final String CEILING = "gmax";

  private static final double NINE_OF_TEN = 2 * 1.6449;

  /** Growth, mm, that a ruler tells; less of it counts as this much. */
  static final double LEAST_GROWTH_MM = 5;

  /** Ratios beyond these count as these: such a reading says more of itself than of the lawn. */
  private static final double MOST_LOG_RATIO = Math.log(3);

  /** Before anything was measured. */
  static GrowthFactor unmeasured(Species species) {
    Parameter ceiling = ParameterTable.find(CEILING, species).orElseThrow();
    return new GrowthFactor(0, Math.log(ceiling.high() / ceiling.low()) / NINE_OF_TEN);
  }

  /**
   * After some intervals were measured.
   *
   * @param ratios measured over modelled growth, each above 0
   */
  GrowthFactor measured(List<Double> ratios) {
    double precision = 1 / (logSd * logSd);
    double sum = logMean * precision;
    for (double ratio : ratios) {
      double log = Math.log(ratio);
      precision += 1 / (RATIO_LOG_SD * RATIO_LOG_SD);
      sum +=
          Math.max(-MOST_LOG_RATIO, Math.min(MOST_LOG_RATIO, log)) / (RATIO_LOG_SD * RATIO_LOG_SD);
    }
    return new GrowthFactor(sum / precision, 1 / Math.sqrt(precision));
  }

  /** The middle one: as many draws lie below as above. */
  double middle() {
    return Math.exp(logMean);
  }

  /** Equations with the middle factor on the ceiling of growth. */
  LawnEquations applied(Parameters parameters) {
    return new LawnEquations(parameters.with(Map.of(CEILING, middle() * parameters.get(CEILING))));
  }

  /** A draw over the middle one, from a normal number. */
  double drawnOverMiddle(double normal) {
    return Math.exp(logSd * normal);
  }

  /** A draw, from a normal number. */
  double drawn(double normal) {
    return Math.exp(logMean + logSd * normal);
  }
}
