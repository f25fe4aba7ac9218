package leafturn.records.table;

import java.util.List;
import java.util.Map;

/**
 * A table as it stands in a file: a row of headings, and rows of cells under them.
 *
 * @param file name of the file as the user gave it
 * @param sheet name of the sheet it stands on; empty for a file that has no sheets
 * @param sheets names of the sheets the file shows; empty for a file that has none
 * @param headings of the columns as they are written; some may be empty
 * @param rows that are not blank, in order
 * @param rowFaults what is wrong with rows as a whole, in order; a row whose cells cannot be told
 *     apart stands here alone
 * @param decimalCommas true when numbers written as text may have a decimal comma
 * @param notes what was understood of the file's form and is worth saying, one sentence each
 */
public record Table(
    String file,
    String sheet,
    List<String> sheets,
    List<String> headings,
    List<Row> rows,
    List<RowFault> rowFaults,
    boolean decimalCommas,
    List<String> notes) {
  private static final int LETTERS = 26;

  public Table {
    sheets = List.copyOf(sheets);
    headings = List.copyOf(headings);
    rows = List.copyOf(rows);
    rowFaults = List.copyOf(rowFaults);
    notes = List.copyOf(notes);
  }

  /**
   * A row of cells.
   *
   * @param number row of the sheet or line of the file, from 1
   * @param cells texts without outer blanks, as many as there are headings; dates in ISO form,
   *     numbers with a decimal point and per cents with their sign
   * @param faults by column, what is wrong with cells whose text could not be had
   */
  public record Row(int number, List<String> cells, Map<Integer, String> faults) {
    public Row {
      cells = List.copyOf(cells);
      faults = Map.copyOf(faults);
    }
  }

  /**
   * A fault of a row as a whole.
   *
   * @param number row of the sheet or line of the file, from 1
   * @param sentence what is there, and what would be right
   */
  public record RowFault(int number, String sentence) {}

  /** A file with a form of its own, which has no columns. */
  public static Table withoutColumns(String file) {
    return new Table(file, "", List.of(), List.of(), List.of(), List.of(), false, List.of());
  }

  /** True when there is nothing under the headings. */
  public boolean isEmpty() {
    return rows.isEmpty() && rowFaults.isEmpty();
  }

  /** True for a sheet of a workbook, false for lines of text. */
  public boolean isSpreadsheet() {
    return !sheet.isEmpty();
  }

  /** Where a row is, as a person sees it: "row 7" of a sheet, "line 7" of a text. */
  public String place(Row row) {
    return place(row.number());
  }

  /** Where a row is by its number, as a person sees it. */
  public String place(int number) {
    return (isSpreadsheet() ? "row " : "line ") + number;
  }

  /** Where a cell is, as a person sees it: "row 7, column C / height_before_mm". */
  public String place(Row row, int column) {
    String heading = headings.get(column);
    return place(row) + ", column " + letters(column) + (heading.isEmpty() ? "" : " / " + heading);
  }

  /** Letters of a column, from A for 0. */
  public static String letters(int column) {
    String last = Character.toString((char) ('A' + column % LETTERS));
    return column < LETTERS ? last : letters(column / LETTERS - 1) + last;
  }
}
