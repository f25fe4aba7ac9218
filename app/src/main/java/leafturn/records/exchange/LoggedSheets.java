package leafturn.records.exchange;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leafturn.records.SourceText;
import leafturn.records.sheet.Kind;
import leafturn.records.sheet.LogSheet;
import leafturn.records.table.Table;
import leafturn.records.table.TableFile;

/** All that a LOG.csv tells, as the entries of a book: what the model takes and what people saw. */
public final class LoggedSheets {
  private LoggedSheets() {}

  /**
   * Reads a log.
   *
   * @return its entries by day, those of one day in the order of the file; of no lawn of a book
   * @throws leafturn.records.InputException with one sentence for each fault of the text
   */
  public static List<LogSheet> read(SourceText source) {
    Table table =
        TableFile.read(source.name(), source.text().getBytes(StandardCharsets.UTF_8), null);
    Findings faults = Findings.faults(table, Reading.byHeadings(table, LogColumns.ALL));
    List<LogSheet> entries = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      RowDocument document = RowDocument.of(LogColumns.LOG, row, faults);
      document.put("lawn", Arrivals.idOf("no lawn"));
      LogSheet entry = document.read(Kind.LOG::read);
      if (entry != null) {
        entries.add(entry);
      }
    }
    faults.throwIfAny();
    entries.sort(Comparator.comparing(LogSheet::day));
    return entries;
  }
}
