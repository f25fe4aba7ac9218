package leafturn.trials.analysis.data;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
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
  private static final Pattern LIKE_A_DATE = Pattern.compile("\\d{1,4}([-/.])\\d{1,2}\\1\\d{1,4}");
  private static final int MOST_FAULTS = 5;

  /** For a model without dates. */
  static Times none(int rows) {
    return new Times(List.of(), new double[0], new int[rows]);
  }

  /**
   * Reads the column of times: in the order given, else as dates, numbers or ordered words.
   *
   * @throws TrialFaultException where a cell among dates is none, or where words stand for times
   *     and their distance is needed
   */
  static Times of(OverTime overTime, TrialTable table, @Nullable List<String> order) {
    checkDates(overTime.time(), table);
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
    LocalDate date = date(label);
    return date == null ? null : (double) date.toEpochDay();
  }

  /** Whether a text is a date of the calendar, as 2026-05-31. */
  public static boolean isDate(String text) {
    return date(text) != null;
  }

  private static @Nullable LocalDate date(String label) {
    try {
      return LocalDate.parse(label);
    } catch (DateTimeParseException notADate) {
      return null;
    }
  }

  /** A cell that is meant as a date but is none would take the place of a word, out of order. */
  private static void checkDates(String time, TrialTable table) {
    String[] cells = table.cells(time);
    List<String> present = Arrays.stream(cells).filter(cell -> !cell.isEmpty()).distinct().toList();
    long dates = present.stream().filter(cell -> date(cell) != null).count();
    List<String> faults = new ArrayList<>();
    for (String cell : present) {
      boolean meant = 2 * dates > present.size() || LIKE_A_DATE.matcher(cell).matches();
      if (meant && date(cell) == null && faults.size() < MOST_FAULTS) {
        faults.add(
            "Line %d: %s is '%s', which is no date of the calendar%s; write dates as 2026-05-31."
                .formatted(
                    table.lines().get(Arrays.asList(cells).indexOf(cell)),
                    time,
                    cell,
                    dates == 0 ? "" : " as the others of the column are"));
      }
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
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
