package leafturn.trials.analysis.data;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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

  private static final String BEYOND = "beyond what can be measured or computed";

  private static final int MOST_FAULTS = 10;
  private static final int MOST_LINES = 3;

  /**
   * Reads a column of numbers; {@code <2} is below a detection limit of 2.
   *
   * @throws TrialFaultException naming line and value of what is no number
   */
  public static Response of(String name, String[] cells, List<Integer> lines) {
    double[] values = new double[cells.length];
    boolean[] below = new boolean[cells.length];
    Map<String, Repeated> faults = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      List<String> wrong = new ArrayList<>();
      below[i] = cells[i].startsWith("<");
      String text = below[i] ? cells[i].substring(1).strip() : cells[i];
      if (below[i] && text.startsWith("-")) {
        wrong.add(
            "%s is '%s', but a detection limit lies above zero; write it as <2."
                .formatted(name, cells[i]));
      } else if (below[i] && text.isEmpty()) {
        wrong.add(
            "%s is '<' without a detection limit; write it as <2, or leave the cell empty if the value is missing."
                .formatted(name));
      }
      values[i] = number(text, cells[i], name, wrong);
      int line = lines.get(i);
      for (String each : wrong) {
        // Each huge value is another one; their cause is one.
        String cause = each.contains(BEYOND) ? BEYOND : each;
        faults.computeIfAbsent(cause, own -> new Repeated(each, new ArrayList<>())).lines.add(line);
      }
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(
          faults.values().stream().limit(MOST_FAULTS).map(Repeated::told).toList());
    }
    return new Response(name, values, below);
  }

  /** A fault with the lines that have it. */
  private record Repeated(String sentence, List<Integer> lines) {
    /** "Line 2: ...", or "Lines 2, 3, 4 and 77 more: ...". */
    String told() {
      if (lines.size() == 1) {
        return "Line %d: %s".formatted(lines.get(0), sentence);
      }
      int named = Math.min(MOST_LINES, lines.size() - 1);
      int more = lines.size() - named;
      return "Lines %s and %s: %s"
          .formatted(
              lines.stream().limit(named).map(String::valueOf).collect(Collectors.joining(", ")),
              more == 1 ? lines.get(named).toString() : more + " more",
              sentence);
    }
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

  private static double number(String text, String cell, String name, List<String> faults) {
    if (text.isEmpty()) {
      return Double.NaN;
    }
    Double value = Numbers.parse(text);
    if (value == null) {
      faults.add(
          "%s is '%s', which is no number; write it with a decimal point and no unit, or leave the cell empty if it is missing."
              .formatted(name, cell.length() > 40 ? cell.substring(0, 40) + "..." : cell));
      return Double.NaN;
    }
    if (!canBeComputed(value)) {
      faults.add(
          "%s is %s, %s; use a unit in which it lies between 1e-40 and 1e40."
              .formatted(name, cell, BEYOND));
      return Double.NaN;
    }
    return value;
  }
}
