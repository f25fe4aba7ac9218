package leafturn.records.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.records.CsvTable;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * Reads a table from a CSV file (columns separated by commas, semicolons or tabs) or from a sheet
 * of an XLSX workbook; which of them it is, its first bytes tell.
 */
public final class TableFile {
  /** Largest file, bytes. */
  public static final int LIMIT_BYTES = 10_000_000;

  /** Most rows under the headings. */
  public static final int MOST_ROWS = 50_000;

  /** Most columns. */
  public static final int MOST_COLUMNS = 200;

  /** Most cells of all rows together. */
  static final int MOST_CELLS = 1_000_000;

  /** Longest text of a cell, characters: as long as spreadsheets themselves allow. */
  static final int LONGEST_CELL = 32_767;

  private static final byte[] ZIP = {'P', 'K', 3, 4};
  private static final byte[] OLD_WORKBOOK = {
    (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
  };

  private TableFile() {}

  /**
   * Reads a table.
   *
   * @param name of the file as the user gave it
   * @param sheet name of the sheet to read, or null for the first that is not empty
   * @throws InputException with one sentence for each fault of the file
   */
  public static Table read(String name, byte[] bytes, @Nullable String sheet) {
    if (bytes.length > LIMIT_BYTES) {
      throw new InputException(
          "%s: it is too large; a table may have up to %d MB."
              .formatted(name, LIMIT_BYTES / 1_000_000));
    }
    if (startsWith(bytes, OLD_WORKBOOK)) {
      throw new InputException(
          name
              + ": it is a workbook of the old form or has a password; save it without one as XLSX,"
              + " or as CSV.");
    }
    return startsWith(bytes, ZIP) ? Workbook.read(name, bytes, sheet) : csv(name, bytes);
  }

  private static boolean startsWith(byte[] bytes, byte[] beginning) {
    return bytes.length >= beginning.length
        && java.util.Arrays.equals(bytes, 0, beginning.length, beginning, 0, beginning.length);
  }

  private static Table csv(String name, byte[] bytes) {
    SourceText source = SourceText.of(name, bytes, LIMIT_BYTES);
    Faults faults = new Faults(name);
    CsvTable csv = new CsvTable(source, faults);
    faults.throwIfAny();
    TableSize size = new TableSize(name);
    size.columns(csv.headings().size());
    List<Table.Row> rows = new ArrayList<>();
    List<Table.RowFault> rowFaults = new ArrayList<>();
    csv.forEachRow(
        row -> {
          List<String> cells = new ArrayList<>();
          for (int column = 0; column < csv.headings().size(); column++) {
            cells.add(row.text(column));
          }
          if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
            size.row(cells);
            rows.add(new Table.Row(Math.toIntExact(row.line()), cells, Map.of()));
          }
        },
        (line, sentence) -> rowFaults.add(new Table.RowFault(Math.toIntExact(line), sentence)));
    return new Table(
        name,
        "",
        List.of(),
        csv.headings(),
        rows,
        rowFaults,
        csv.mayHaveDecimalCommas(),
        List.of());
  }
}
