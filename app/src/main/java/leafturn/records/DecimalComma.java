package leafturn.records;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/**
 * Numbers of columns that are read as text, brought to the decimal point. Where decimal commas are
 * possible, a column has either commas or points: a point beside commas may part thousands.
 */
public final class DecimalComma {
  private static final Pattern NUMBER =
      Pattern.compile("<?\\s*[-+]?(\\d+([.,]\\d*)?|[.,]\\d+)([eE][-+]?\\d{1,3})?");

  private final boolean possible;
  private final Map<String, Character> markOf = new HashMap<>();

  /**
   * @param possible whether numbers may have a decimal comma; else texts are left as they are
   */
  public DecimalComma(boolean possible) {
    this.possible = possible;
  }

  /**
   * The text of a cell, with a point where it is a number with a decimal comma.
   *
   * @param column by which other cells are known to have the same mark
   * @param fault told when the column has both marks
   */
  public String withPoint(String column, String text, Consumer<String> fault) {
    boolean comma = text.indexOf(',') >= 0;
    boolean marked = comma || text.indexOf('.') >= 0;
    if (!possible || !marked || !NUMBER.matcher(text).matches()) {
      return text;
    }
    char mark = comma ? ',' : '.';
    Character before = markOf.putIfAbsent(column, mark);
    if (before != null && before != mark) {
      fault.accept(
          "%s has decimal commas and decimal points in %s; use one of them."
              .formatted(Faults.quoted(text), Faults.quoted(column)));
    }
    return text.replace(',', '.');
  }
}
