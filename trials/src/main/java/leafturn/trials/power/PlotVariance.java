package leafturn.trials.power;

/**
 * What makes two plots that are treated alike differ, as variances in the squared unit of the
 * outcome, or of its logarithm.
 *
 * @param plot between plots of a block (halves of a yard), the whole season through
 * @param plotByDate of a plot's own course over the dates
 * @param dateCorrelation of that course between neighbouring dates, 0 to below 1
 * @param core between cores, or ratings, of one plot on one date
 * @param laboratory between determinations of one sample
 */
public record PlotVariance(
    double plot, double plotByDate, double dateCorrelation, double core, double laboratory) {
  public PlotVariance {
    if (!(Math.min(Math.min(plot, plotByDate), Math.min(core, laboratory)) >= 0)) {
      throw new IllegalArgumentException("variances are 0 or more");
    }
    if (!(dateCorrelation >= 0 && dateCorrelation < 1)) {
      throw new IllegalArgumentException("the correlation between dates lies from 0 to below 1");
    }
  }

  /** A variance whose parts are not known. */
  public static PlotVariance whole(double variance) {
    return new PlotVariance(variance, 0, 0, 0, 0);
  }

  /**
   * Variance of a plot's season mean: plot + plotByDate c(m, ρ) + (core and laboratory)/m.
   *
   * @source common practice, no source
   */
  public double ofSeasonMean(Sampling sampling) {
    double readings = sampling.varianceOfReading(core, laboratory) / sampling.dates();
    return plot + plotByDate * meanCorrelation(sampling.dates(), dateCorrelation) + readings;
  }

  /** Variance of one reading of a plot on one date beside its course. */
  public double ofReading(Sampling sampling) {
    return sampling.varianceOfReading(core, laboratory);
  }

  /** Whether more cores or dates would lower anything. */
  public boolean hasParts() {
    return plotByDate + core + laboratory > 0;
  }

  /**
   * The mean of the m by m correlation matrix whose entries are ρ to the distance.
   *
   * @param dates m, 1 or more
   * @param correlation ρ, 0 to below 1
   * @source common practice, no source
   */
  static double meanCorrelation(int dates, double correlation) {
    double sum = dates;
    double power = 1;
    for (int lag = 1; lag < dates; lag++) {
      power *= correlation;
      sum += 2.0 * (dates - lag) * power;
    }
    return sum / ((double) dates * dates);
  }
}
