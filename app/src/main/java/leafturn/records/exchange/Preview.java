package leafturn.records.exchange;

import java.util.List;
import java.util.Map;
import leafturn.quantity.Units;
import leafturn.records.table.Table;

/**
 * What importing a table would do. Nothing is written by looking.
 *
 * @param table the table, or one without columns where the file has a form of its own
 * @param reading what its columns are taken for
 * @param faults what must be put right before anything can be imported
 * @param arrivals what would be added
 * @param alreadyThere rows that say what the book says already
 * @param conflicts rows that say something else than the book does, which stays as it is
 * @param remarks rows to look at once more, which would be added all the same
 * @param notes what was understood of the table and is worth saying, one sentence each
 */
public record Preview(
    Table table,
    Reading reading,
    Findings faults,
    Arrivals arrivals,
    int alreadyThere,
    Findings conflicts,
    Findings remarks,
    List<String> notes) {
  public Preview {
    notes = List.copyOf(notes);
  }

  /** What importing a file with a form of its own would do, that has no faults. */
  public static Preview of(String file, Arrivals arrivals, List<String> notes) {
    Table table = Table.withoutColumns(file);
    return new TableLook(table, new Reading(List.of(), Map.of())).preview(arrivals, notes);
  }

  /** True when there is something to add and nothing to put right. */
  public boolean ready() {
    return faults.count() == 0 && arrivals.count() > 0;
  }

  /** The days that would be added, a line each, in the units of whoever reads them. */
  public List<String> daysInWords(int most, Units units) {
    return arrivals.days().stream().limit(most).map(day -> StationDayWords.of(day, units)).toList();
  }
}
