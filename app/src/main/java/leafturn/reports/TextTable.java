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
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int column = 0; column < columns; column++) {
        widths[column] = Math.max(widths[column], width(row.get(column)));
      }
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < columns; column++) {
        String pad = " ".repeat(widths[column] - width(row.get(column)));
        line.append(column == 0 ? "" : GAP);
        line.append(column == 0 ? row.get(column) + pad : pad + row.get(column));
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }
}
