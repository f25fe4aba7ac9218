package leafturn.trials.observation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A reading in the unit of its outcome.
 *
 * @param given the reading as it was given
 * @param value in the unit of the outcome; the detection limit where it lies below
 * @param belowDetection whether it is only known to lie below {@code value}
 */
public record CleanReading(Reading given, double value, boolean belowDetection) {
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
