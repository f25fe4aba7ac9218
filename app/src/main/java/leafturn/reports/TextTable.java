package leafturn.reports;

import java.util.ArrayList;
import java.util.List;

/** Columns of text for a terminal: the first to the left, the others to the right. */
public final class TextTable {
  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param header names of the columns
   */
  public TextTable(String... header) {
    rows.add(List.of(header));
  }

  /** Adds a row with one cell for each column. */
  public TextTable row(String... cells) {
    if (cells.length != rows.get(0).size()) {
      throw new IllegalArgumentException(
          "a row has %d cells, the header %d".formatted(cells.length, rows.get(0).size()));
    }
    rows.add(List.of(cells));
    return this;
  }

  /** The lines of the table, without blanks at their ends. */
  public List<String> lines() {
    return lines(Integer.MAX_VALUE);
  }

  /**
   * The same with no line wider than a number of characters, as far as its columns allow: further
   * columns follow below, under an empty line and beside the first column again.
   */
  public List<String> lines(int widest) {
    int[] widths = widths();
    List<String> lines = new ArrayList<>();
    int from = 1;
    do {
      int to = firstBeyond(widths, from, widest);
      if (from > 1) {
        lines.add("");
      }
      for (List<String> row : rows) {
        lines.add(line(row, widths, from, to));
      }
      from = to;
    } while (from < widths.length);
    return lines;
  }

  private int[] widths() {
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int column = 0; column < widths.length; column++) {
        widths[column] = Math.max(widths[column], width(row.get(column)));
      }
    }
    return widths;
  }

  /** The first column from one on that does not fit beside the first; one always does. */
  private static int firstBeyond(int[] widths, int from, int widest) {
    int width = widths[0];
    for (int column = from; column < widths.length; column++) {
      width += GAP.length() + widths[column];
      if (width > widest && column > from) {
        return column;
      }
    }
    return widths.length;
  }

  private static String line(List<String> row, int[] widths, int from, int to) {
    StringBuilder line = new StringBuilder(row.get(0));
    line.append(" ".repeat(widths[0] - width(row.get(0))));
    for (int column = from; column < to; column++) {
      String cell = row.get(column);
      line.append(GAP).append(" ".repeat(widths[column] - width(cell))).append(cell);
    }
    return line.toString().stripTrailing();
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }
}
