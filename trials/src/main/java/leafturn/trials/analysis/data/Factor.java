package leafturn.trials.analysis.data;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A classification of the observations.
 *
 * @param name the column's name
 * @param levels in order; the first is the reference of treatment coding
 * @param codes the level of each row, from 0; -1 where it is missing
 */
public record Factor(String name, List<String> levels, int[] codes) {
  /** Marks a row without a level. */
  public static final int MISSING = -1;

  /**
   * Reads a column as levels: in the order given, else numbers as numbers, else text by code point.
   *
   * @throws TrialFaultException if a cell holds a level that the given order lacks, or the order
   *     holds one that no cell has
   */
  public static Factor of(String name, String[] cells, @Nullable List<String> order) {
    List<String> present = Arrays.stream(cells).filter(cell -> !cell.isEmpty()).distinct().toList();
    List<String> levels = order == null ? sorted(present) : order;
    if (order != null) {
      checkOrder(name, present, order);
    }
    Map<String, Integer> codeOf = new HashMap<>();
    for (String level : levels) {
      codeOf.put(level, codeOf.size());
    }
    int[] codes =
        Arrays.stream(cells).mapToInt(cell -> codeOf.getOrDefault(cell, MISSING)).toArray();
    return new Factor(name, List.copyOf(levels), codes);
  }

  /** The factor on some of its rows, with all its levels. */
  public Factor at(int[] rows) {
    return new Factor(name, levels, Arrays.stream(rows).map(row -> codes[row]).toArray());
  }

  private static void checkOrder(String name, List<String> present, List<String> order) {
    List<String> faults = new ArrayList<>();
    present.stream()
        .filter(level -> !order.contains(level))
        .forEach(
            level ->
                faults.add(
                    "levels.%s does not name '%s', which the data hold; it names %s."
                        .formatted(name, level, String.join(", ", order))));
    order.stream()
        .filter(level -> !present.contains(level))
        .forEach(
            level ->
                faults.add(
                    "levels.%s names '%s', which no row of the data holds; they hold %s."
                        .formatted(name, level, String.join(", ", sorted(present)))));
    if (order.stream().distinct().count() < order.size()) {
      faults.add("levels.%s names a level twice; each may stand once.".formatted(name));
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
  }

  private static List<String> sorted(List<String> present) {
    boolean numbers = present.stream().allMatch(level -> Numbers.parse(level) != null);
    Comparator<String> byCodePoint = Factor::compareCodePoints;
    return present.stream()
        .sorted(
            numbers
                ? Comparator.<String>comparingDouble(Double::parseDouble).thenComparing(byCodePoint)
                : byCodePoint)
        .toList();
  }

  private static int compareCodePoints(String one, String other) {
    return Arrays.compare(one.codePoints().toArray(), other.codePoints().toArray());
  }
}
