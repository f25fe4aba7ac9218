package leafturn.records.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.InputException;
import leafturn.records.table.Table;

/** What was found while a table was looked at, with its places; the first ones are kept. */
public final class Findings {
  /** A table of ten thousand bad cells is told by its first ones and their number. */
  private static final int KEPT = 200;

  /** Rows that are named of a finding that many rows have. */
  private static final int MOST_ROWS = 3;

  private final Table table;
  private final Reading reading;
  private final List<Finding> kept = new ArrayList<>();
  private final Map<List<String>, Together> together = new HashMap<>();
  private int count;

  /**
   * @param place where, as a person sees it
   * @param sentence what is there, and what would be right
   */
  public record Finding(String place, String sentence) {}

  /** A finding of several rows: where it is kept, and the rows. */
  private record Together(int index, List<String> rows) {}

  Findings(Table table, Reading reading) {
    this.table = table;
    this.reading = reading;
  }

  /** Faults of a table, with those its rows have as a whole. */
  static Findings faults(Table table, Reading reading) {
    Findings faults = new Findings(table, reading);
    table.rowFaults().forEach(each -> faults.keep(table.place(each.number()), each.sentence()));
    return faults;
  }

  Table table() {
    return table;
  }

  Reading reading() {
    return reading;
  }

  /** Text of a cell that tells what its row belongs to; empty where there is none. */
  String text(Table.Row row, String column) {
    return reading
        .column(column)
        .flatMap(reading::place)
        .map(place -> row.cells().get(place))
        .orElse("");
  }

  /** True when the table has such a column. */
  boolean has(String column) {
    return reading.column(column).flatMap(reading::place).isPresent();
  }

  /** Adds one of the table as a whole. */
  void add(String sentence) {
    keep(table.file(), sentence);
  }

  /** Adds one of a row. */
  void add(Table.Row row, String sentence) {
    keep(table.place(row), sentence);
  }

  /** Adds one of a column in a row by the column's name. */
  void add(Table.Row row, String column, String sentence) {
    add(row, reading.column(column).orElseThrow(), sentence);
  }

  /** Adds one of a column in a row, or of the row where that column is not in the table. */
  void add(Table.Row row, Column column, String sentence) {
    Optional<Integer> place = reading.place(column);
    keep(
        place.isPresent() ? table.place(row, place.get()) : table.place(row) + ", " + column.name(),
        sentence);
  }

  /**
   * Adds one of a column in a row, which is told once, with its first rows, if others have it too.
   */
  void addTogether(Table.Row row, Column column, String sentence) {
    List<String> key = List.of(column.name(), sentence);
    Together same = together.get(key);
    if (same == null) {
      together.put(key, new Together(kept.size(), new ArrayList<>(List.of(table.place(row)))));
      add(row, column, sentence);
      return;
    }
    same.rows.add(table.place(row));
    if (same.index < kept.size()) {
      int more = same.rows.size() - MOST_ROWS;
      List<String> first = same.rows.subList(0, Math.min(MOST_ROWS, same.rows.size()));
      String rows = String.join(", ", first) + (more > 0 ? " and %,d more".formatted(more) : "");
      kept.set(
          same.index,
          new Finding(
              kept.get(same.index).place(),
              "%s So it is in %,d rows: %s.".formatted(capital(sentence), same.rows.size(), rows)));
    }
  }

  private void keep(String place, String sentence) {
    count++;
    if (kept.size() < KEPT) {
      kept.add(new Finding(place, capital(sentence)));
    }
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  /**
   * Ends the reading of a file where there are any.
   *
   * @throws InputException with the first of them
   */
  void throwIfAny() {
    if (count > 0) {
      throw new InputException(
          kept.stream()
              .map(
                  each ->
                      each.place().equals(table.file())
                          ? "%s: %s".formatted(table.file(), each.sentence())
                          : "%s, %s: %s".formatted(table.file(), each.place(), each.sentence()))
              .toList());
    }
  }

  /** The first of them. */
  public List<Finding> kept() {
    return List.copyOf(kept);
  }

  /** How many there are. */
  public int count() {
    return count;
  }
}
