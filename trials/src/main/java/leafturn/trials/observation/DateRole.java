package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.data.Times;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;

/** Whether a model takes dates for what they are: in order, never drawn at random. */
public final class DateRole {
  private DateRole() {}

  /**
   * What is wrong with the dates of a table: those of {@code overTime}, else of its only column
   * that holds nothing but dates.
   */
  public static List<Remark> remarks(TrialTable table, TrialModel model) {
    OverTime overTime = model.overTime();
    List<String> columns =
        overTime == null
            ? table.columns().stream().filter(name -> holdsDates(table.cells(name))).toList()
            : List.of(overTime.time());
    return columns.size() == 1 ? remarks(model, columns.get(0)) : List.of();
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
