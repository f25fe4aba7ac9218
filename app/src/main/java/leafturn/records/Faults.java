package leafturn.records;

import java.util.ArrayList;
import java.util.List;

/** Collects the faults of one file, so that all of them can be reported at once. */
public final class Faults {
  /** A file of a million bad lines is told by its first faults and their number. */
  private static final int KEPT = 100;

  private static final int LONGEST_VALUE = 60;

  private final String file;
  private final List<Fault> kept = new ArrayList<>();
  private long total;

  /**
   * One fault.
   *
   * @param field the column or the JSON path it belongs to; empty for the file or a whole line
   * @param sentence what is there, and what would be right
   * @param placed the sentence with the file, line and field put before it
   */
  public record Fault(String field, String sentence, String placed) {}

  /**
   * @param file name of the file as the user gave it
   */
  public Faults(String file) {
    this.file = file;
  }

  /** Adds a fault of the file as a whole. */
  public void add(String sentence) {
    keep("", sentence, file + ": " + sentence);
  }

  /** Adds a fault of one line. */
  public void add(long line, String sentence) {
    keep("", sentence, "%s, line %d: %s".formatted(file, line, sentence));
  }

  /** Adds a fault of one column or field in a line. */
  public void add(long line, String field, String sentence) {
    keep(field, sentence, "%s, line %d, %s: %s".formatted(file, line, field, sentence));
  }

  private void keep(String field, String sentence, String placed) {
    total++;
    if (kept.size() < KEPT) {
      kept.add(new Fault(field, sentence, placed));
    }
  }

  /** True when nothing was found. */
  public boolean none() {
    return total == 0;
  }

  /** Number of faults found so far. */
  public long count() {
    return total;
  }

  /**
   * @throws InputException with every fault, when there is one
   */
  public void throwIfAny() {
    if (total == 0) {
      return;
    }
    List<Fault> faults = new ArrayList<>(kept);
    if (total > kept.size()) {
      String more = "%d more faults follow.".formatted(total - kept.size());
      faults.add(new Fault("", more, file + ": " + more));
    }
    throw InputException.of(faults);
  }

  /** A value as it may stand in a message: quoted, on one line, not too long. */
  public static String quoted(String value) {
    String line = value.replaceAll("\\p{Cntrl}", "\u00b7");
    boolean cut = line.codePointCount(0, line.length()) > LONGEST_VALUE;
    String shown =
        cut ? line.substring(0, line.offsetByCodePoints(0, LONGEST_VALUE)) + "..." : line;
    return '"' + shown + '"';
  }
}
