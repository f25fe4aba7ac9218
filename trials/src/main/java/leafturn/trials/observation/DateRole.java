package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import leafturn.trials.analysis.data.Times;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;

/** Whether a model takes dates for what they are: in order, never drawn at random. */
public final class DateRole {
  private static final Pattern WRITTEN_AS_DATE = Pattern.compile("\\d{4}-\\d{1,2}-\\d{1,2}");

  private DateRole() {}

  /**
   * What is wrong with the dates of a table: those of {@code overTime}, else of its only column
   * that holds nothing but dates.
   */
  public static List<Remark> remarks(TrialTable table, TrialModel model) {
    OverTime overTime = model.overTime();
    List<Remark> faults =
        model.factors().stream()
            .filter(table::has)
            .flatMap(name -> impossible(name, table).stream())
            .toList();
    if (!faults.isEmpty()) {
      return faults;
    }
    List<String> columns =
        overTime == null
            ? table.columns().stream().filter(name -> holdsDates(table.cells(name))).toList()
            : List.of(overTime.time());
    return columns.size() == 1 ? remarks(model, columns.get(0)) : List.of();
  }

  /** Cells written as dates that the calendar does not have, in a column that else holds dates. */
  private static List<Remark> impossible(String name, TrialTable table) {
    String[] cells = table.cells(name);
    if (Arrays.stream(cells).noneMatch(cell -> Times.isDate(cell.strip()))) {
      return List.of();
    }
    return Arrays.stream(cells)
        .distinct()
        .filter(cell -> WRITTEN_AS_DATE.matcher(cell.strip()).matches())
        .filter(cell -> !Times.isDate(cell.strip()))
        .map(
            cell ->
                Remark.refused(
                    "Line %d: %s is '%s', which is no date of the calendar as the others of the column"
                        + " are; write dates as 2026-05-31.",
                    table.lines().get(Arrays.asList(cells).indexOf(cell)), name, cell))
        .toList();
  }

  private static boolean holdsDates(String[] cells) {
    return cells.length > 0 && Arrays.stream(cells).allMatch(cell -> Times.isDate(cell.strip()));
  }

  /**
   * What is wrong with a model's dates.
   *
   * @param date the column of the dates
   */
  public static List<Remark> remarks(TrialModel model, String date) {
    List<Remark> remarks = new ArrayList<>();
    boolean alone =
        model.random().stream()
            .anyMatch(term -> term.within().size() == 1 && term.within().contains(date));
    boolean fixed = model.fixed().stream().anyMatch(term -> term.variables().contains(date));
    if (alone && !fixed) {
      remarks.add(
          Remark.warning(
              "Dates are taken as drawn at random, but they follow each other; put %s into the fixed"
                  + " part.",
              date));
    }
    if (fixed && model.overTime() == null) {
      remarks.add(
          Remark.warning(
              "Dates were never given out by chance, and neighbouring ones are alike: a plain"
                  + " split-plot analysis finds too much. Give overTime, for instance ar1, or"
                  + " compare one summary of the season for each plot."));
    }
    return remarks;
  }
}
