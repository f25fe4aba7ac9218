package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import leafturn.quantity.DisplayNumber;
import leafturn.reports.OrdinalReport;
import leafturn.reports.TrialReport;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.TrialModel;

/**
 * The tables of an analysis as its model file asked for it.
 *
 * @param level of intervals, for instance "95 %"
 */
record AskedTables(TrialModel model, String level) {
  /** Tests, variances, means and differences. */
  List<ShownTable> of(TrialReport report) {
    List<ShownTable> tables = new ArrayList<>(List.of(tests(report), variances(report)));
    if (!report.means().isEmpty()) {
      tables.add(means(report));
      tables.add(differences(report));
    }
    return tables;
  }

  /** Tests and coefficients of an analysis of ordered classes. */
  static List<ShownTable> of(OrdinalReport report) {
    List<List<String>> tests = new ArrayList<>();
    report
        .tests()
        .forEach(
            test ->
                tests.add(
                    List.of(
                        test.term(),
                        number(test.chiSquared()),
                        number(test.numDf()),
                        EffectWords.plainP(test.p()))));
    List<List<String>> coefficients = new ArrayList<>();
    report
        .coefficients()
        .forEach(
            own -> coefficients.add(List.of(own.name(), number(own.estimate()), number(own.se()))));
    List<List<String>> variances = new ArrayList<>();
    report
        .variances()
        .forEach(
            own ->
                variances.add(List.of(String.join(" by ", own.within()), number(own.variance()))));
    List<ShownTable> tables = new ArrayList<>();
    tables.add(
        new ShownTable(
            "Tests by likelihood ratio", List.of("Term", "Chi squared", "df", "p"), tests));
    tables.add(
        new ShownTable(
            "Coefficients, logits", List.of("Name", "Estimate", "Standard error"), coefficients));
    if (!variances.isEmpty()) {
      tables.add(new ShownTable("Variances, logits", List.of("Between", "Variance"), variances));
    }
    return tables;
  }

  private static ShownTable tests(TrialReport report) {
    List<List<String>> rows = new ArrayList<>();
    report
        .tests()
        .forEach(
            test ->
                rows.add(
                    List.of(
                        test.term(),
                        number(test.f()),
                        number(test.numDf()) + " and " + number(test.denDf()),
                        EffectWords.plainP(test.p()))));
    return new ShownTable(
        "Tests, each term beside all others",
        List.of("Term", "F", "Degrees of freedom", "p"),
        rows);
  }

  static ShownTable variances(TrialReport report) {
    List<List<String>> rows = new ArrayList<>();
    report
        .variances()
        .forEach(
            own -> rows.add(List.of(String.join(" by ", own.within()), number(own.variance()))));
    rows.add(List.of("residual", number(report.residualVariance())));
    return new ShownTable("Variances", List.of("Between", "Variance"), rows);
  }

  private ShownTable means(TrialReport report) {
    boolean lettered = report.means().stream().anyMatch(mean -> mean.letters() != null);
    List<String> header = new ArrayList<>(List.of("Of", "Mean", level + " interval"));
    if (lettered) {
      header.add("Letters, " + how(model));
    }
    List<List<String>> rows = new ArrayList<>();
    for (TrialReport.Mean mean : report.means()) {
      List<String> row = new ArrayList<>();
      row.add(String.join(", ", mean.levels().values()));
      row.add(number(mean.mean()));
      row.add(number(mean.lower()) + " to " + number(mean.upper()));
      if (lettered) {
        row.add(Objects.requireNonNullElse(mean.letters(), "–"));
      }
      rows.add(row);
    }
    return new ShownTable("Means" + scale(), header, rows);
  }

  /** How p values and letters allow for several comparisons. */
  static String how(TrialModel model) {
    Comparison compare = model.compare();
    String word = compare == null ? "none" : compare.multiplicity().word();
    return word.equals("none") ? "not adjusted" : "by " + word;
  }

  private ShownTable differences(TrialReport report) {
    List<List<String>> rows = new ArrayList<>();
    for (TrialReport.Contrast own : report.contrasts()) {
      rows.add(
          List.of(
              own.first() + " − " + own.second() + AskedModelView.within(own),
              number(own.difference()),
              number(own.lower()) + " to " + number(own.upper()),
              EffectWords.plainP(own.pAdjusted())));
    }
    return new ShownTable(
        "Differences" + scale(),
        List.of("Of", "Difference", level + " interval", "p, " + how(model)),
        rows);
  }

  private String scale() {
    return model.scale() == TrialModel.Scale.LOG ? ", log scale" : "";
  }

  private static String number(double value) {
    if (!Double.isFinite(value)) {
      return "–";
    }
    boolean whole = Math.abs(value - Math.rint(value)) < 1e-6 && Math.abs(value) < 1e6;
    return whole ? DisplayNumber.decimals(value, 0) : DisplayNumber.significant(value, 4);
  }
}
