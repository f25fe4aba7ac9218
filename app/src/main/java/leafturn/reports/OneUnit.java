package leafturn.reports;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.findings.AskedTrial;

/**
 * A single unit split once: its rows repeat the measuring, not the treatment, so that no test of
 * the treatment is given.
 *
 * @source hurlbert1984
 */
final class OneUnit {
  private static final String OF_DATES =
      ", to which every reading counts alike; a report's mean over the season by trapezoids weighs each date by the days around it and may be another number";

  private OneUnit() {}

  /** The report, without tests and intervals of the arms where the table holds one unit. */
  static TrialReport of(TrialReport report, TrialTable table, AskedTrial.Columns columns) {
    return table.has(columns.unit())
            && Arrays.stream(table.cells(columns.unit()))
                    .filter(cell -> !cell.isEmpty())
                    .distinct()
                    .count()
                == 1
        ? withheld(report, columns)
        : report;
  }

  private static TrialReport withheld(TrialReport report, AskedTrial.Columns columns) {
    String arms = columns.factor();
    List<String> warnings = new ArrayList<>();
    warnings.add(
        "There is one %s: its rows measure its areas and do not repeat %s, so tests, intervals and letters of %s are left out; only the difference between the areas can be stated, here that of the model's means%s."
            .formatted(columns.unit(), arms, arms, columns.time() == null ? "" : OF_DATES));
    report.warnings().stream()
        .filter(each -> !each.startsWith(arms + " ") && !each.startsWith(arms + "*"))
        .filter(each -> !each.startsWith(TrialReport.OF_LETTERS))
        .forEach(warnings::add);
    return new TrialReport(
        report.observations(),
        report.logLikelihoodReml(),
        report.tests().stream().map(test -> withheld(test, arms)).toList(),
        report.coefficients(),
        report.variances(),
        report.correlation(),
        report.residualVariance(),
        report.boundary(),
        report.means().stream().map(OneUnit::withheld).toList(),
        report.contrasts().stream().map(OneUnit::withheld).toList(),
        report.aboveLimit(),
        warnings);
  }

  private static TrialReport.Test withheld(TrialReport.Test test, String arms) {
    return List.of(test.term().split("\\*", -1)).contains(arms)
        ? new TrialReport.Test(test.term(), test.numDf(), 0, Double.NaN, Double.NaN)
        : test;
  }

  private static TrialReport.Mean withheld(TrialReport.Mean own) {
    return new TrialReport.Mean(
        own.levels(), own.mean(), Double.NaN, 0, Double.NaN, Double.NaN, null, own.geometricMean());
  }

  private static TrialReport.Contrast withheld(TrialReport.Contrast own) {
    return new TrialReport.Contrast(
        own.first(),
        own.second(),
        own.within(),
        own.difference(),
        Double.NaN,
        0,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        Double.NaN,
        own.ratio(),
        null,
        null,
        null);
  }
}
