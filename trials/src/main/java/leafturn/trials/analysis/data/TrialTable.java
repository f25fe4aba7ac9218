package leafturn.trials.analysis.data;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * The data of a trial as text, one row for each observation; an empty cell is missing.
 *
 * @param columns names, in the order of the file
 * @param rows cells, each row as long as {@code columns}
 * @param lines where each row stands in its file, for messages
 */
public record TrialTable(List<String> columns, List<List<String>> rows, List<Integer> lines) {
  private static final int MOST_SENTENCES = 5;
  private static final int MOST_CELLS = 100_000_000;

  public TrialTable {
    columns = columns.stream().map(String::strip).toList();
    rows = List.copyOf(rows);
    lines = List.copyOf(lines);
    List<String> faults = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      if (columns.subList(0, i).contains(columns.get(i))) {
        faults.add(
            "Column %d is a second column named '%s'; each name may stand once."
                .formatted(i + 1, columns.get(i)));
      }
    }
    for (int i = 0; i < rows.size() && faults.size() < 20; i++) {
      if (rows.get(i).size() != columns.size()) {
        faults.add(
            "Line %d has %d cells where the header has %d."
                .formatted(lines.get(i), rows.get(i).size(), columns.size()));
      }
    }
    controls(columns, rows, lines, faults);
    if (rows.isEmpty()) {
      faults.add("There are no observations: give a header and a row for each.");
    }
    if ((long) rows.size() * columns.size() > MOST_CELLS) {
      faults.add("The table has more than %,d cells.".formatted(MOST_CELLS));
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
  }

  private static void controls(
      List<String> columns, List<List<String>> rows, List<Integer> lines, List<String> faults) {
    for (int i = 0; i < rows.size() && faults.size() < 20; i++) {
      for (int column = 0; column < rows.get(i).size() && column < columns.size(); column++) {
        OptionalInt control = Spelling.control(rows.get(i).get(column));
        if (control.isPresent()) {
          faults.add(
              "Line %d, %s: the cell holds the control character U+%04X; remove it."
                  .formatted(lines.get(i), columns.get(column), control.getAsInt()));
        }
      }
    }
  }

  /** Whether there is a column of this name. */
  public boolean has(String column) {
    return columns.contains(column);
  }

  /** The cells of a column, stripped. */
  public String[] cells(String column) {
    int index = columns.indexOf(column);
    return rows.stream().map(row -> row.get(index).strip()).toArray(String[]::new);
  }

  /** Rows that repeat an earlier one in every cell, in sentences. */
  public List<String> repeatedRows() {
    Map<List<String>, Integer> seen = new HashMap<>();
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      Integer earlier = seen.putIfAbsent(rows.get(i), lines.get(i));
      if (earlier != null && sentences.size() < MOST_SENTENCES) {
        sentences.add(
            "Lines %d and %d are the same in every cell; a row entered twice would count as a replicate."
                .formatted(earlier, lines.get(i)));
      }
    }
    return sentences;
  }
}
