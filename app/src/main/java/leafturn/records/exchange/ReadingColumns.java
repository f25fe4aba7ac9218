package leafturn.records.exchange;

import java.util.List;
import leafturn.records.exchange.Column.Type;
import leafturn.trials.observation.OutcomeReadings;

/** The columns of a table of a trial's readings, one row for each reading. */
public final class ReadingColumns {
  static final String READING = "reading";
  static final String PLOT = "plot";
  static final String DATE = "date";
  static final String OUTCOME = "outcome";
  static final String VALUE = "value";
  static final String UNIT = "unit";
  static final String SAMPLE = "sample";

  /** All of them. */
  public static final List<Column> ALL =
      List.of(
          of(PLOT, "plot", Type.TEXT, "plot"),
          of(DATE, "date", Type.DATE, "day of sampling or rating").orCalled("day"),
          of(OUTCOME, "outcome", Type.TEXT, "outcome, by its name in the plan"),
          of(VALUE, "value", Type.TEXT, "value; <2 is below a limit of 2"),
          of(UNIT, "unit", Type.TEXT, "unit of the value"),
          of("laboratory", "laboratory", Type.TEXT, "laboratory"),
          of("method", "method", Type.TEXT, "extractant or method").orCalled("extractant"),
          of("detection_limit", "detectionLimit", Type.NUMBER, "detection limit")
              .orCalled("detectionlimit"),
          of("batch", "batch", Type.TEXT, "batch of the laboratory"),
          of("rater", "rater", Type.TEXT, "rater"),
          of(SAMPLE, "sample", Type.TEXT, "code on the bag"),
          of("duplicate", "duplicate", Type.NUMBER, "number of the duplicate"),
          of("note", "note", Type.TEXT, "note"));

  private ReadingColumns() {}

  /** The column to which a fault of a reading belongs: that of its unit, or that of its value. */
  static Column atFault(Reading reading, Column of, IllegalArgumentException fault) {
    boolean unit = fault instanceof OutcomeReadings.UnitFault && of.name().equals(VALUE);
    return unit ? reading.column(UNIT).orElse(of) : of;
  }

  private static Column of(String name, String path, Type type, String meaning) {
    return Column.of(READING, name, path, type, meaning);
  }
}
