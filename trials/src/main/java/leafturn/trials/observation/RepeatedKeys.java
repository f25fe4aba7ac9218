package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.TrialModel;

/**
 * Rows of a table that agree in everything its model knows of them: a plot and date entered twice,
 * or samples of one plot. Samples are no fault where a random term holds them together, where all
 * of the error is between such rows, or where many plots, or all of one arm, have several.
 */
public final class RepeatedKeys {
  private static final int MOST_SENTENCES = 5;

  /** Where more than one key in so many stands twice, it is how plots were sampled. */
  private static final int MANY = 10;

  private final TrialModel model;
  private final List<String> columns;
  private final List<List<String>> rows;
  private final List<Integer> lines;
  private final List<String> key;
  private final Map<List<String>, List<Integer>> rowsOf;

  private RepeatedKeys(TrialTable table, TrialModel model) {
    this.model = model;
    this.columns = table.columns();
    this.rows = table.rows();
    this.lines = table.lines();
    this.key = key(model);
    this.rowsOf = key.stream().allMatch(columns::contains) ? rowsOf(key) : Map.of();
  }

  /**
   * What is to be said of rows that stand twice; refused where the model knows a plot and date
   * once.
   */
  public static List<Remark> remarks(TrialTable table, TrialModel model) {
    RepeatedKeys keys = new RepeatedKeys(table, model);
    List<List<Integer>> repeated =
        keys.rowsOf.values().stream().filter(same -> same.size() > 1).toList();
    return repeated.isEmpty() ? List.of() : keys.told(repeated);
  }

  private List<Remark> told(List<List<Integer>> repeated) {
    boolean most = 2 * repeated.size() > rowsOf.size();
    if (model.random().isEmpty()) {
      boolean planned = !most && key.size() > 1 && isCrossed();
      return planned ? List.of(counted(repeated, "", "average them")) : List.of();
    }
    if (isSampled()) {
      String look = "look whether one of them was entered twice";
      return most ? List.of() : List.of(counted(repeated, "", look));
    }
    String apart = apart();
    String hold = "average them, or add the random term within " + String.join(", ", key);
    boolean slips = repeated.size() == 1 || MANY * repeated.size() <= rowsOf.size();
    return !slips || !apart.isEmpty() || isPlanned(repeated) || !isCrossed()
        ? List.of(counted(repeated, apart, hold))
        : refused(repeated);
  }

  /** All columns by which the model tells rows apart. */
  private static List<String> key(TrialModel model) {
    Set<String> key = new LinkedHashSet<>();
    model.random().forEach(term -> key.addAll(term.within()));
    key.addAll(model.factors());
    key.addAll(model.covariates());
    OverTime overTime = model.overTime();
    if (overTime != null) {
      key.addAll(overTime.unit());
      key.add(overTime.time());
    }
    key.remove(model.response());
    return List.copyOf(key);
  }

  /** Rows with a value by what they have in some columns, all of it given. */
  private Map<List<String>, List<Integer>> rowsOf(List<String> names) {
    int[] at = names.stream().mapToInt(columns::indexOf).toArray();
    int response = columns.indexOf(model.response());
    Map<List<String>, List<Integer>> found = new LinkedHashMap<>();
    for (int row = 0; row < rows.size(); row++) {
      List<String> cells = rows.get(row);
      List<String> own = IntStream.of(at).mapToObj(column -> cells.get(column).strip()).toList();
      boolean known = response >= 0 && !cells.get(response).isBlank() && !own.contains("");
      if (known) {
        found.computeIfAbsent(own, any -> new ArrayList<>(1)).add(row);
      }
    }
    return found;
  }

  /** Whether groups of a random term hold the rows of one key and nothing else. */
  private boolean isSampled() {
    return model.random().stream()
        .map(RandomTerm::within)
        .anyMatch(within -> rowsOf(within).size() == rowsOf.size());
  }

  /** A column beside the model that numbers the rows of a key; empty for none. */
  private String apart() {
    for (String column : columns) {
      if (!key.contains(column) && !column.equals(model.response())) {
        List<String> wider = new ArrayList<>(key);
        wider.add(column);
        boolean one = rowsOf(wider).values().stream().allMatch(same -> same.size() == 1);
        if (one && 2 * rowsOf(List.of(column)).size() <= rowsOf.size()) {
          return column;
        }
      }
    }
    return "";
  }

  /**
   * Whether exactly the plots of one level have several rows, as a control sown twice in a block.
   */
  private boolean isPlanned(List<List<Integer>> repeated) {
    return repeated.size() > 1
        && model.factors().stream()
            .filter(key::contains)
            .anyMatch(
                factor -> {
                  int at = columns.indexOf(factor);
                  String level = rows.get(repeated.get(0).get(0)).get(at).strip();
                  long all =
                      rowsOf.keySet().stream()
                          .filter(cells -> cells.get(key.indexOf(factor)).equals(level))
                          .count();
                  return all == repeated.size()
                      && repeated.stream()
                          .allMatch(same -> rows.get(same.get(0)).get(at).strip().equals(level));
                });
  }

  /** Whether most combinations of levels are there, leaving out what the others determine. */
  private boolean isCrossed() {
    List<String> least = new ArrayList<>(key);
    for (String column : key) {
      List<String> without = new ArrayList<>(least);
      without.remove(column);
      if (rowsOf(without).size() == rowsOf.size()) {
        least = without;
      }
    }
    double all = 1;
    for (String column : least) {
      all *= rowsOf(List.of(column)).size();
    }
    return 2.0 * rowsOf.size() >= all;
  }

  private List<Remark> refused(List<List<Integer>> repeated) {
    List<Remark> remarks = new ArrayList<>();
    for (List<Integer> same : repeated.subList(0, Math.min(MOST_SENTENCES, repeated.size()))) {
      remarks.add(
          Remark.refused(
              "%s: %s stands on %s; remove the wrong %s, or, where these are samples of one plot,"
                  + " average them or number them in a column of their own.",
              place(same), model.response(), values(same), same.size() == 2 ? "one" : "ones"));
    }
    if (repeated.size() > MOST_SENTENCES) {
      remarks.add(
          Remark.refused("%d more stand twice in the same way.", repeated.size() - MOST_SENTENCES));
    }
    return remarks;
  }

  private Remark counted(List<List<Integer>> repeated, String apart, String advice) {
    List<Integer> first = repeated.get(0);
    return Remark.warning(
        "%d of %d combinations of %s have several rows%s (%s: %s on %s); where they are samples of"
            + " one plot, %s.",
        repeated.size(),
        rowsOf.size(),
        String.join(", ", key),
        apart.isEmpty() ? "" : ", told apart by " + apart,
        place(first),
        model.response(),
        values(first),
        advice);
  }

  private String place(List<Integer> same) {
    List<String> cells = rows.get(same.get(0));
    return key.stream()
        .map(
            column -> {
              String cell = cells.get(columns.indexOf(column)).strip();
              return cell.startsWith(column) ? cell : column + " " + cell;
            })
        .collect(Collectors.joining(", "));
  }

  /** "lines 3 and 9 as 6 and 7". */
  private String values(List<Integer> same) {
    int response = columns.indexOf(model.response());
    return "lines %s as %s"
        .formatted(
            listed(same.stream().map(row -> String.valueOf(lines.get(row))).toList()),
            listed(same.stream().map(row -> rows.get(row).get(response).strip()).toList()));
  }

  private static String listed(List<String> words) {
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}
