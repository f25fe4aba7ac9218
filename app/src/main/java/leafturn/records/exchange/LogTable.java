package leafturn.records.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.book.Sheet;
import leafturn.records.exchange.Column.Type;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The log of a lawn as a table, for a spreadsheet or another book. It has the columns of a log for
 * the command line, those beyond it that some entry needs, and the id of each entry. Read back, it
 * says just what it was written from, photographs aside. The command line reads metric tables only.
 */
public final class LogTable {
  private final List<Sheet<LogSheet>> entries;
  private final List<CellSource> rows;
  private final List<Written> columns;

  /**
   * A column as it is written.
   *
   * @param units of its numbers
   */
  private record Written(Column column, Units units) {
    String heading() {
      return units == Units.METRIC ? column.name() : column.usNames().get(0);
    }
  }

  private LogTable(List<Sheet<LogSheet>> entries, Units units) {
    this.entries = entries;
    this.rows =
        entries.stream().map(entry -> new CellSource(Kind.LOG.write(entry.content()))).toList();
    this.columns =
        Stream.concat(
                LogColumns.OF_THE_MODEL.stream(),
                LogColumns.OF_THE_BOOK.stream()
                    .filter(column -> rows.stream().anyMatch(row -> row.tells(column))))
            .map(column -> new Written(column, unitsOf(column, units)))
            .toList();
  }

  /**
   * The table of some entries, in their order.
   *
   * @param units of whoever reads it; a column of which a number would not come back as it is stays
   *     metric, as its heading says
   */
  public static LogTable of(List<Sheet<LogSheet>> entries, Units units) {
    return new LogTable(entries, units);
  }

  private Units unitsOf(Column column, Units wanted) {
    boolean kept = rows.stream().allMatch(row -> row.keeps(column, wanted));
    return kept && !column.usNames().isEmpty() ? wanted : Units.METRIC;
  }

  /** As CSV by RFC 4180; texts that begin like a formula have an apostrophe before them. */
  public String csv() {
    StringWriter text = new StringWriter();
    try (CsvWriter csv = CsvWriter.builder().build(text)) {
      csv.writeRecord(headings());
      for (int i = 0; i < entries.size(); i++) {
        List<String> cells = new ArrayList<>();
        for (Written written : columns) {
          String cell = rows.get(i).text(written.column(), written.units());
          cells.add(written.column().type() == Type.TEXT ? Guarded.write(cell) : cell);
        }
        cells.add(entries.get(i).id());
        csv.writeRecord(cells);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  /** As an XLSX workbook of one sheet; its texts are texts, whatever they begin with. */
  public byte[] xlsx() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(bytes, "Leafturn", "1.0")) {
      Worksheet sheet = workbook.newWorksheet("Log");
      List<String> headings = headings();
      for (int column = 0; column < headings.size(); column++) {
        sheet.value(0, column, headings.get(column));
        sheet.style(0, column).bold().set();
      }
      sheet.freezePane(0, 1);
      for (int i = 0; i < entries.size(); i++) {
        for (int column = 0; column < columns.size(); column++) {
          Written written = columns.get(column);
          rows.get(i).put(written.column(), written.units(), sheet, i + 1, column);
        }
        sheet.value(i + 1, columns.size(), entries.get(i).id());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private List<String> headings() {
    return Stream.concat(columns.stream().map(Written::heading), Stream.of(LogColumns.ID)).toList();
  }
}
