package leafturn.trials.findings;

/**
 * One value read on a plot.
 *
 * @param plot its code
 * @param date as the file writes it
 * @param day the date as a number of days
 * @param value in the unit of the outcome; the detection limit where it lies below
 * @param belowDetection whether it is only known to lie below {@code value}
 */
public record PlotReading(
    String plot, String date, double day, double value, boolean belowDetection) {}
