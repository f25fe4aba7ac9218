package leafturn.trials.analysis.data;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/** Names that are most likely one name, written in two ways. */
public final class Spelling {
  private Spelling() {}

  /**
   * What is left of a name without the difference between capitals and small letters, and without
   * outer, doubled, no-break and invisible spaces.
   */
  public static String plain(String name) {
    return name.replaceAll("[\\p{Cf}]", "")
        .replaceAll("[\\p{Z}\\s]+", " ")
        .strip()
        .toLowerCase(Locale.ROOT);
  }

  /** How two names with the same plain form differ, for people. */
  public static String difference(String one, String other) {
    String spaced = one.replaceAll("[\\p{Cf}\\p{Z}\\s]+", "");
    String otherSpaced = other.replaceAll("[\\p{Cf}\\p{Z}\\s]+", "");
    if (spaced.equals(otherSpaced)) {
      return "only in spaces, some of which cannot be seen";
    }
    return one.equalsIgnoreCase(other) ? "only in capitals" : "only in capitals and spaces";
  }

  /** The first control character of a text that is no tab or line break; empty where none is. */
  public static OptionalInt control(String text) {
    return text.chars()
        .filter(each -> Character.isISOControl(each) && "\t\n\r".indexOf(each) < 0)
        .findFirst();
  }

  /** Levels of a column that differ only in capitals or spaces, a sentence for each pair. */
  public static List<String> alike(TrialTable table, String column) {
    String[] cells = table.cells(column);
    Map<String, Integer> firstLine = new LinkedHashMap<>();
    for (int row = 0; row < cells.length; row++) {
      if (!cells[row].isEmpty()) {
        firstLine.putIfAbsent(cells[row], table.lines().get(row));
      }
    }
    Map<String, String> firstOf = new TreeMap<>();
    return firstLine.keySet().stream()
        .filter(level -> firstOf.putIfAbsent(plain(level), level) != null)
        .map(
            level -> {
              String first = firstOf.getOrDefault(plain(level), level);
              return "%s has '%s' (first on line %d) beside '%s' (line %d), which differ %s; write them alike, or name both in levels.%s if they are two."
                  .formatted(
                      column,
                      level,
                      firstLine.get(level),
                      first,
                      firstLine.get(first),
                      difference(first, level),
                      column);
            })
        .toList();
  }
}
