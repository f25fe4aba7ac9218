package leafturn.trials.observation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A reading in the unit of its outcome.
 *
 * @param given the reading as it was given
 * @param value in the unit of the outcome; the detection limit where it lies below
 * @param belowDetection whether it is only known to lie below {@code value}
 * @param limits how much of {@code value} are detection limits: all of it below detection, a part
 *     in a mean of measurements of which only some lie below, 0 elsewhere
 */
public record CleanReading(Reading given, double value, boolean belowDetection, double limits) {
  CleanReading(Reading given, double value, boolean belowDetection) {
    this(given, value, belowDetection, belowDetection ? value : 0);
  }

  /** Whether some of the measurements it is the mean of lie below detection and some do not. */
  public boolean isPartlyBelow() {
    return belowDetection && limits < value;
  }

  /**
   * The value with a share of the detection limits in their place.
   *
   * @param share of each limit, 0 to 1
   */
  public double withLimitsAt(double share) {
    return value - (1 - share) * limits;
  }

  /** Code of the plot. */
  public String plot() {
    return given.plot();
  }

  /** The day. */
  public LocalDate date() {
    return given.date();
  }

  /** Extractant or method, or null. */
  public @Nullable String method() {
    return given.method();
  }
}
