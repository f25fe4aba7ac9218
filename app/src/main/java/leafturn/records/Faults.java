package leafturn.records;

import java.util.ArrayList;
import java.util.List;

/** Collects the faults of one file, so that all of them can be reported at once. */
public final class Faults {
  /** A file of a million bad lines is told by its first faults and their number. */
  private static final int KEPT = 100;

  private static final int LONGEST_VALUE = 60;

  private final String file;
  private final List<String> kept = new ArrayList<>();
  private long total;

  /**
   * @param file name of the file as the user gave it
   */
  public Faults(String file) {
    this.file = file;
  }

  /** Adds a fault of the file as a whole. */
  public void add(String sentence) {
    keep(file + ": " + sentence);
  }

  /** Adds a fault of one line. */
  public void add(long line, String sentence) {
    keep("%s, line %d: %s".formatted(file, line, sentence));
  }

  /** Adds a fault of one column or field in a line. */
  public void add(long line, String field, String sentence) {
    keep("%s, line %d, %s: %s".formatted(file, line, field, sentence));
  }

  private void keep(String sentence) {
    total++;
    if (kept.size() < KEPT) {
      kept.add(sentence);
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
    List<String> sentences = new ArrayList<>(kept);
    if (total > kept.size()) {
      sentences.add("%s: %d more faults follow.".formatted(file, total - kept.size()));
    }
    throw new InputException(sentences);
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
