package leafturn.records.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.quantity.Units;
import leafturn.records.table.Table;

/**
 * What each column of a table is taken for.
 *
 * @param columns those that a table of its kind may have
 * @param picks by place in the table; columns without a pick are not used
 */
public record Reading(List<Column> columns, Map<Integer, Pick> picks) {

  /**
   * What one column is taken for.
   *
   * @param units of its numbers
   * @param dates how its dates are written
   */
  public record Pick(Column column, Units units, DateOrder dates) {}

  /** Order of the parts of a date. */
  public enum DateOrder {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST
  }

  public Reading {
    columns = List.copyOf(columns);
    picks = Map.copyOf(picks);
  }

  /** What the headings of a table say. */
  public static Reading byHeadings(Table table, List<Column> columns) {
    Map<Integer, Pick> picks = new HashMap<>();
    for (int place = 0; place < table.headings().size(); place++) {
      for (Column column : columns) {
        Units units = column.unitsOf(table.headings().get(place));
        boolean taken = picks.values().stream().anyMatch(pick -> pick.column().equals(column));
        if (units != null && !taken) {
          picks.put(place, new Pick(column, units, DateOrder.YEAR_FIRST));
        }
      }
    }
    return new Reading(columns, picks);
  }

  /** The column of a name. */
  public Optional<Column> column(String name) {
    return columns.stream().filter(column -> column.name().equals(name)).findFirst();
  }

  /** Where a column stands in the table; empty when it is not there. */
  Optional<Integer> place(Column column) {
    return picks.entrySet().stream()
        .filter(pick -> pick.getValue().column().equals(column))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * The units in which the numbers of a column are written; metric where it is not in the table.
   */
  Units unitsOf(String name) {
    return picks.values().stream()
        .filter(pick -> pick.column().name().equals(name))
        .map(Pick::units)
        .findFirst()
        .orElse(Units.METRIC);
  }

  /** Columns that two or more columns of the table are taken for. */
  List<Column> doubled() {
    List<Column> taken = new ArrayList<>(picks.values().stream().map(Pick::column).toList());
    columns.forEach(taken::remove);
    return taken.stream().distinct().toList();
  }

  /** Headings of the table that are not used. */
  public List<String> unused(Table table) {
    List<String> unused = new ArrayList<>();
    for (int place = 0; place < table.headings().size(); place++) {
      if (!picks.containsKey(place) && !table.headings().get(place).isEmpty()) {
        unused.add(table.headings().get(place));
      }
    }
    return unused;
  }
}
