package leafturn.trials.analysis.data;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The measured values.
 *
 * @param name the column's name
 * @param values in the column's unit; NaN where missing, the detection limit where censored
 * @param belowDetection whether the value is known only to lie below the limit that stands in
 *     {@code values}
 */
public record Response(String name, double[] values, boolean[] belowDetection) {
  /** Beyond this size, and below one over it, powers of variances leave the range of numbers. */
  private static final double LARGEST = 1e40;

  private static final int MOST_FAULTS = 10;

  /**
   * Reads a column of numbers; {@code <2} is below a detection limit of 2.
   *
   * @throws TrialFaultException naming line and value of what is no number
   */
  public static Response of(String name, String[] cells, List<Integer> lines) {
    double[] values = new double[cells.length];
    boolean[] below = new boolean[cells.length];
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < cells.length; i++) {
      below[i] = cells[i].startsWith("<");
      String text = below[i] ? cells[i].substring(1).strip() : cells[i];
      if (below[i] && text.startsWith("-")) {
        faults.add(
            "Line %d: %s is '%s', but a detection limit lies above zero; write it as <2."
                .formatted(lines.get(i), name, cells[i]));
      } else if (below[i] && text.isEmpty()) {
        faults.add(
            "Line %d: %s is '<' without a detection limit; write it as <2, or leave the cell empty if the value is missing."
                .formatted(lines.get(i), name));
      }
      values[i] = number(text, cells[i], name, lines.get(i), faults);
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults.subList(0, Math.min(MOST_FAULTS, faults.size())));
    }
    return new Response(name, values, below);
  }

  /** Reads a column of plain numbers, none of them below detection. */
  public static double[] numbers(String name, String[] cells, List<Integer> lines) {
    Response read = of(name, cells, lines);
    for (int i = 0; i < cells.length; i++) {
      if (read.belowDetection[i]) {
        throw new TrialFaultException(
            "Line %d: %s is '%s', but only the response may be below detection; give a number."
                .formatted(lines.get(i), name, cells[i]));
      }
    }
    return read.values;
  }

  /** Whether sums of squares of such values stay within the range of numbers. */
  public static boolean canBeComputed(double value) {
    double size = Math.abs(value);
    return size <= LARGEST && (size == 0 || size >= 1 / LARGEST);
  }

  /** How many values lie below their detection limit. */
  public int countBelowDetection() {
    int count = 0;
    for (boolean below : belowDetection) {
      count += below ? 1 : 0;
    }
    return count;
  }

  /** The response on some of its rows. */
  public Response at(int[] rows) {
    boolean[] below = new boolean[rows.length];
    for (int i = 0; i < rows.length; i++) {
      below[i] = belowDetection[rows[i]];
    }
    return new Response(name, Arrays.stream(rows).mapToDouble(row -> values[row]).toArray(), below);
  }

  private static double number(
      String text, String cell, String name, int line, List<String> faults) {
    if (text.isEmpty()) {
      return Double.NaN;
    }
    Double value = Numbers.parse(text);
    if (value == null) {
      faults.add(
          "Line %d: %s is '%s', which is no number; write it with a decimal point and no unit, or leave the cell empty if it is missing."
              .formatted(line, name, cell.length() > 40 ? cell.substring(0, 40) + "..." : cell));
      return Double.NaN;
    }
    if (!canBeComputed(value)) {
      faults.add(
          "Line %d: %s is %s, beyond what can be measured or computed; use a unit in which it lies between 1e-40 and 1e40."
              .formatted(line, name, cell));
      return Double.NaN;
    }
    return value;
  }
}
