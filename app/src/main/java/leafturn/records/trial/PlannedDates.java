package leafturn.records.trial;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leafturn.records.Dates;
import leafturn.records.InputException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.AskedTrial;

/**
 * The column of dates in a table of results whose plan has several: a season is summed up over
 * them, so none may be taken for samples of one day.
 */
final class PlannedDates {
  private PlannedDates() {}

  /**
   * The trial with its column of dates: the one the model names, else the only one of the table.
   *
   * @throws InputException where plots have several rows and no date tells them apart
   */
  static AskedTrial dated(TrialPlan plan, AskedTrial asked, TrialTable table, Path file) {
    AskedTrial.Columns columns = asked.columns();
    int dates = plan.observing().dates().size();
    if (columns.time() != null || dates < 2) {
      return asked;
    }
    List<String> found =
        table.columns().stream().filter(column -> holdsDates(table.cells(column))).toList();
    if (found.size() == 1) {
      return with(asked, found.get(0));
    }
    if (hasSeveralRowsAPlot(columns, table)) {
      throw new InputException(
          "%s: it plans %d dates, and the table has several rows of a plot, but the model does not say which column holds their dates; name it, as \"trial\": {\"date\": \"date\"}."
              .formatted(file, dates));
    }
    return asked;
  }

  private static boolean holdsDates(String[] cells) {
    return cells.length > 0
        && Arrays.stream(cells).allMatch(cell -> Dates.parse(cell.strip()) != null);
  }

  private static boolean hasSeveralRowsAPlot(AskedTrial.Columns columns, TrialTable table) {
    List<String> names =
        columns.plot() == null
            ? List.of(columns.unit(), columns.factor())
            : List.of(columns.plot());
    if (!names.stream().allMatch(table::has)) {
      return false;
    }
    List<String[]> cells = names.stream().map(table::cells).toList();
    Set<List<String>> seen = new HashSet<>();
    for (int row = 0; row < table.rows().size(); row++) {
      int at = row;
      if (!seen.add(cells.stream().map(own -> own[at]).toList())) {
        return true;
      }
    }
    return false;
  }

  private static AskedTrial with(AskedTrial asked, String time) {
    AskedTrial.Columns columns = asked.columns();
    return new AskedTrial(
        asked.name(),
        asked.question(),
        new AskedTrial.Columns(columns.unit(), columns.factor(), time, columns.plot()),
        asked.contrasts(),
        asked.control(),
        asked.outcome(),
        asked.scope(),
        asked.seed(),
        asked.record(),
        asked.laid());
  }
}
