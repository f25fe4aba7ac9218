package leafturn.records.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leafturn.records.Faults;
import leafturn.records.NearestName;
import leafturn.records.table.Table;

/** What is gathered while a table is looked at; the parts that all kinds of tables share. */
final class TableLook {
  /** Tables that are easily brought to each other's import. */
  private static final List<Import> IMPORTS =
      List.of(
          new Import("Properties and lawns", PropertyColumns.ALL, PropertyColumns.PROPERTY),
          new Import("Past log", LogColumns.ALL, "what"));

  final Table table;
  final Reading reading;
  final Findings faults;
  final Findings conflicts;
  final Findings remarks;
  int alreadyThere;

  /**
   * An import of tables.
   *
   * @param title what the page calls it
   * @param needed a column that no table of it goes without
   */
  private record Import(String title, List<Column> columns, String needed) {
    /**
     * How many headings of a table are columns of this import; none where the needed one is not.
     */
    int fitting(Table table) {
      Reading reading = Reading.byHeadings(table, columns);
      boolean has = reading.column(needed).flatMap(reading::place).isPresent();
      return has ? reading.picks().size() : 0;
    }
  }

  TableLook(Table table, Reading reading) {
    this.table = table;
    this.reading = reading;
    this.faults = Findings.faults(table, reading);
    this.conflicts = new Findings(table, reading);
    this.remarks = new Findings(table, reading);
  }

  /** Reports columns that must be there and are not; true when all are. */
  boolean hasColumns(String... names) {
    int before = faults.count();
    for (String name : names) {
      if (!faults.has(name)) {
        List<String> unused = reading.unused(table);
        String near =
            NearestName.of(name, unused)
                .map(heading -> " It is perhaps the one called " + Faults.quoted(heading) + ".")
                .orElse("");
        faults.add(
            "no column is taken for %s; choose it below, or add it.%s"
                .formatted(meaning(name), near));
      }
    }
    for (Column column : reading.doubled()) {
      faults.add(
          "two columns are taken for %s; choose one of them below."
              .formatted(meaning(column.name())));
    }
    if (table.isEmpty()) {
      faults.add("it has headings but no rows under them.");
    }
    return faults.count() == before;
  }

  /** What a column holds and its name, where that is another: what was done (column "what"). */
  private String meaning(String name) {
    return reading
        .column(name)
        .map(Column::meaning)
        .filter(meaning -> !meaning.equals(name))
        .map(meaning -> "%s (column %s)".formatted(meaning, Faults.quoted(name)))
        .orElse(name);
  }

  /** That the columns are rather those of another import, in a sentence; empty where not. */
  private List<String> belongsElsewhere() {
    Optional<Import> own =
        IMPORTS.stream().filter(each -> each.columns().equals(reading.columns())).findFirst();
    return own.stream()
        .flatMap(here -> IMPORTS.stream().filter(each -> each != here))
        .filter(other -> other.fitting(table) > own.orElseThrow().fitting(table))
        .map(
            other ->
                "Its columns are those of “%s”: import it there, if that is what it holds."
                    .formatted(other.title()))
        .toList();
  }

  /** The preview, with what is to be said of the table. */
  Preview preview(Arrivals arrivals, List<String> moreNotes) {
    List<String> notes = new ArrayList<>(belongsElsewhere());
    notes.addAll(table.notes());
    List<String> unused = reading.unused(table);
    if (!unused.isEmpty()) {
      notes.add(
          "Not used: "
              + unused.stream().map(Faults::quoted).collect(Collectors.joining(", "))
              + ".");
    }
    notes.addAll(moreNotes);
    return new Preview(table, reading, faults, arrivals, alreadyThere, conflicts, remarks, notes);
  }
}
