package leafturn.trials.analysis.data;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.model.OverTime;
import org.jspecify.annotations.Nullable;

/**
 * When each observation was made.
 *
 * @param labels the times of the trial in order, as the file writes them
 * @param values the same as numbers; days for dates, positions for other words
 * @param positions of the observations among {@code labels}; -1 where missing
 */
public record Times(List<String> labels, double[] values, int[] positions) {
  /** For a model without dates. */
  static Times none(int rows) {
    return new Times(List.of(), new double[0], new int[rows]);
  }

  /**
   * Reads the column of times: in the order given, else as dates, numbers or ordered words.
   *
   * @throws TrialFaultException where words stand for times and their distance is needed
   */
  static Times of(OverTime overTime, TrialTable table, @Nullable List<String> order) {
    Factor factor = Factor.of(overTime.time(), table.cells(overTime.time()), order);
    double[] values = new double[factor.levels().size()];
    List<String> words = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      Double value = number(factor.levels().get(i));
      if (value == null) {
        words.add(factor.levels().get(i));
      }
      values[i] = value == null ? i : value;
    }
    if (!words.isEmpty() && overTime.correlation() == OverTime.Correlation.CAR1) {
      throw new TrialFaultException(
          "overTime.time names %s, where '%s' is neither a number nor a date; car1 needs the time between observations (2026-05-31, or days)."
              .formatted(overTime.time(), words.get(0)));
    }
    if (words.isEmpty() && order != null && !isRising(values)) {
      throw new TrialFaultException(
          "levels.%s does not put the times in order; write them from the first to the last."
              .formatted(overTime.time()));
    }
    return new Times(factor.levels(), values, factor.codes());
  }

  /** A time as a number: of itself, or of the days of a date; null for other words. */
  public static @Nullable Double number(String label) {
    Double plain = Numbers.parse(label);
    if (plain != null) {
      return plain;
    }
    try {
      return (double) LocalDate.parse(label).toEpochDay();
    } catch (DateTimeParseException notADate) {
      return null;
    }
  }

  private static boolean isRising(double[] values) {
    for (int i = 1; i < values.length; i++) {
      if (values[i] <= values[i - 1]) {
        return false;
      }
    }
    return true;
  }

  boolean isKnown(int row) {
    return positions[row] != Factor.MISSING;
  }

  Times at(int[] rows) {
    return new Times(labels, values, Arrays.stream(rows).map(row -> positions[row]).toArray());
  }
}
