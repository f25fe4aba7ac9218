package leafturn.records.exchange;

import java.util.regex.Pattern;

/**
 * Texts in CSV files that a spreadsheet must not take for formulas: an apostrophe goes before one
 * that begins like a formula (common practice, no source), and reading takes it away again.
 */
public final class Guarded {
  private static final Pattern LIKE_A_FORMULA = Pattern.compile("(?s)'*[=+\\-@\\t\\r].*");

  private Guarded() {}

  /** A text as it goes into a cell. */
  public static String write(String text) {
    return LIKE_A_FORMULA.matcher(text).matches() ? "'" + text : text;
  }

  /** The text that a cell was written from. */
  public static String read(String cell) {
    return cell.startsWith("'") && LIKE_A_FORMULA.matcher(cell).matches()
        ? cell.substring(1)
        : cell;
  }
}
