package leafturn.trials.power;

import leafturn.trials.analysis.numeric.Tails;

/**
 * How often a plot is measured.
 *
 * @param dates in the season, 1 or more
 * @param cores that go into one composite sample, or ratings of one plot on one date; 1 or more
 * @param composites of a plot on one date, 1 or more
 * @param duplicates laboratory determinations of one composite, 1 or more
 */
public record Sampling(int dates, int cores, int composites, int duplicates) {
  /** Each plot once. */
  public static final Sampling ONCE = new Sampling(1, 1, 1, 1);

  private static final int MOST_CORES = 1_000_000;

  public Sampling {
    if (Math.min(Math.min(dates, cores), Math.min(composites, duplicates)) < 1) {
      throw new IllegalArgumentException("dates, cores, composites and duplicates are 1 or more");
    }
  }

  /** The same with more cores. */
  public Sampling withCores(int others) {
    return new Sampling(dates, others, composites, duplicates);
  }

  /** The same with more dates. */
  public Sampling withDates(int others) {
    return new Sampling(others, cores, composites, duplicates);
  }

  /**
   * Variance of a reading of one plot on one date, the plot's own aside.
   *
   * @param core variance between cores, 0 or more
   * @param laboratory variance between determinations, 0 or more
   * @source common practice, no source
   */
  public double varianceOfReading(double core, double laboratory) {
    double spread = core / ((double) cores * composites);
    return spread + laboratory / ((double) composites * duplicates);
  }

  /**
   * Variance of the mean of a plot sampled on one date: plot + core/(cores composites) +
   * laboratory/(composites duplicates).
   *
   * @source common practice, no source
   */
  public double varianceOfPlotMean(double plot, double core, double laboratory) {
    return plot + varianceOfReading(core, laboratory);
  }

  /**
   * Cores so that their mean lies within a relative error, (z CV/e)², before rounding up.
   *
   * @param cv between cores, as a fraction
   * @param errorFraction above 0
   * @param level of confidence, as 0.95
   * @source common practice, no source
   */
  public static double coresByNormal(double cv, double errorFraction, double level) {
    double z = Tails.tQuantileTwoSided(1 - level, Double.POSITIVE_INFINITY);
    double root = z * cv / errorFraction;
    return root * root;
  }

  /**
   * The least number of cores n with n ≥ (t CV/e)², where t has n − 1 degrees of freedom.
   *
   * @param cv between cores, as a fraction
   * @param errorFraction above 0
   * @param level of confidence, as 0.95
   * @throws IllegalArgumentException where a million cores do not reach it
   * @source common practice, no source
   */
  public static int cores(double cv, double errorFraction, double level) {
    double fewest = coresByNormal(cv, errorFraction, level);
    if (fewest > MOST_CORES) {
      throw new IllegalArgumentException(
          "a million cores do not reach a relative error that small");
    }
    int cores = Math.max(2, (int) fewest);
    while (true) {
      double root = Tails.tQuantileTwoSided(1 - level, cores - 1.0) * cv / errorFraction;
      if (cores >= root * root) {
        return cores;
      }
      cores++;
    }
  }
}
