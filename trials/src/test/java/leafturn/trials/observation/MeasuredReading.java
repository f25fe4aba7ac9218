package leafturn.trials.observation;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Builds a reading that was measured, for tests: what is not told is null. */
public final class MeasuredReading {
  private final String plot;
  private final LocalDate date;
  private final String outcome;
  private final String value;
  private final @Nullable String unit;
  private @Nullable String laboratory;
  private @Nullable String method;
  private @Nullable Double detectionLimit;
  private @Nullable String batch;
  private @Nullable String sample;
  private @Nullable Integer duplicate;

  private MeasuredReading(
      String plot, LocalDate date, String outcome, String value, @Nullable String unit) {
    this.plot = plot;
    this.date = date;
    this.outcome = outcome;
    this.value = value;
    this.unit = unit;
  }

  /** A reading with nothing known but its value. */
  public static MeasuredReading of(
      String plot, LocalDate date, String outcome, String value, @Nullable String unit) {
    return new MeasuredReading(plot, date, outcome, value, unit);
  }

  /** Measured there by a method. */
  public MeasuredReading by(String laboratory, @Nullable String method) {
    this.laboratory = laboratory;
    this.method = method;
    return this;
  }

  /** The detection limit told beside it, in the unit of the value. */
  public MeasuredReading limit(double detectionLimit) {
    this.detectionLimit = detectionLimit;
    return this;
  }

  /** The run of the laboratory. */
  public MeasuredReading batch(@Nullable String batch) {
    this.batch = batch;
    return this;
  }

  /** The code on the bag. */
  public MeasuredReading sample(@Nullable String sample) {
    this.sample = sample;
    return this;
  }

  /** Which of the measurements of a sample it is. */
  public MeasuredReading duplicate(@Nullable Integer duplicate) {
    this.duplicate = duplicate;
    return this;
  }

  /** The reading. */
  public Reading reading() {
    return new Reading(
        plot,
        date,
        outcome,
        value,
        unit,
        laboratory,
        method,
        detectionLimit,
        batch,
        null,
        sample,
        duplicate,
        null);
  }
}
