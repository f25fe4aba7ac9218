package leafturn.trials.findings;

/**
 * One value read on a plot.
 *
 * @param plot its code
 * @param date as the file writes it
 * @param day the date as a number of days
 * @param value in the unit of the outcome; the detection limit where it lies below
 * @param belowDetection whether it is only known to lie below {@code value}
 * @param limits how much of {@code value} are detection limits, as {@link
 *     leafturn.trials.observation.CleanReading} has it
 */
public record PlotReading(
    String plot, String date, double day, double value, boolean belowDetection, double limits) {
  public PlotReading(String plot, String date, double day, double value, boolean belowDetection) {
    this(plot, date, day, value, belowDetection, belowDetection ? value : 0);
  }

  /** The value with a share of the detection limits in their place. */
  double withLimitsAt(double share) {
    return value - (1 - share) * limits;
  }
}
