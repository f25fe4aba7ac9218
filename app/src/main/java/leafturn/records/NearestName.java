package leafturn.records;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that was probably meant. */
public final class NearestName {
  private NearestName() {}

  /**
   * The valid name closest to a misspelt one, or none when nothing is near: at most a third of the
   * letters (at least two) may have to be changed.
   */
  public static Optional<String> of(String written, Collection<String> valid) {
    String wanted = written.toLowerCase(Locale.ROOT);
    int limit = Math.max(2, Math.min(wanted.length(), 40) / 3);
    String best = null;
    int least = limit + 1;
    for (String name : valid) {
      if (Math.abs(name.length() - wanted.length()) >= least) {
        continue;
      }
      int edits = edits(wanted, name.toLowerCase(Locale.ROOT));
      if (edits < least && edits < Math.max(name.length(), 2)) {
        least = edits;
        best = name;
      }
    }
    return Optional.ofNullable(best);
  }

  /** A message's end: the name probably meant, else the list of valid names. */
  public static String advice(String written, Collection<String> valid) {
    return of(written, valid)
        .map(name -> "did you mean " + name + "?")
        .orElseGet(
            () ->
                valid.isEmpty()
                    ? "none is expected here."
                    : "valid names are " + String.join(", ", valid) + ".");
  }

  /** Letters to insert, delete or replace to turn one word into the other, by rows. */
  private static int edits(String from, String to) {
    int[] above = new int[to.length() + 1];
    for (int column = 0; column <= to.length(); column++) {
      above[column] = column;
    }
    for (int row = 1; row <= from.length(); row++) {
      int[] current = new int[to.length() + 1];
      current[0] = row;
      for (int column = 1; column <= to.length(); column++) {
        int replace = from.charAt(row - 1) == to.charAt(column - 1) ? 0 : 1;
        current[column] =
            Math.min(above[column - 1] + replace, 1 + Math.min(above[column], current[column - 1]));
      }
      above = current;
    }
    return above[to.length()];
  }
}
