package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** An analysed trial in words, line by line. */
final class TrialReportLines {
  private static final int LEAST_WIDTH = 28;

  private final TrialReport report;

  /** Whether the model was fitted to logarithms: means and differences are told as ratios. */
  private final boolean log;

  private final List<String> lines = new ArrayList<>();

  TrialReportLines(TrialReport report) {
    this.report = report;
    this.log =
        report.means().stream().anyMatch(mean -> mean.geometricMean() != null)
            || report.contrasts().stream().anyMatch(contrast -> contrast.ratio() != null);
  }

  List<String> lines() {
    lines.add(
        Double.isNaN(report.logLikelihoodReml())
            ? "%d observations".formatted(report.observations())
            : "%d observations; restricted log likelihood %s"
                .formatted(report.observations(), number(report.logLikelihoodReml())));
    if (!Double.isNaN(report.residualVariance())) {
      addTests();
      addVariances();
    }
    if (!report.means().isEmpty()) {
      addMeans();
      addDifferences();
    }
    addAboveLimit();
    if (!report.warnings().isEmpty()) {
      lines.add("");
      report.warnings().forEach(warning -> lines.add("Note: " + warning));
    }
    return lines;
  }

  /** A line of a section: what it is of, and what is said of it. */
  private record Row(String name, String words) {}

  private void add(String title, List<Row> rows) {
    lines.add("");
    lines.add(title);
    int width = rows.stream().mapToInt(row -> row.name.length()).max().orElse(0);
    String form = "  %-" + Math.max(LEAST_WIDTH, width) + "s %s";
    rows.forEach(row -> lines.add(form.formatted(row.name, row.words)));
  }

  private void addTests() {
    List<Row> rows = new ArrayList<>();
    for (TrialReport.Test test : report.tests()) {
      String words =
          "F %s on %s and %s df, p %s"
              .formatted(number(test.f()), number(test.numDf()), number(test.denDf()), p(test.p()));
      boolean known = !Double.isNaN(test.f());
      String without = test.denDf() == 0 ? "not tested" : "not estimable";
      rows.add(new Row(test.term(), known ? words : without));
    }
    add("Tests (each term beside all others)", rows);
  }

  private void addVariances() {
    List<Row> rows = new ArrayList<>();
    for (TrialReport.Variance own : report.variances()) {
      String effects =
          own.effect2() == null ? own.effect() : own.effect() + " with " + own.effect2();
      rows.add(new Row(String.join("*", own.within()), number(own.variance()) + "  " + effects));
    }
    rows.add(new Row("residual", number(report.residualVariance())));
    add(log ? "Variances (log scale: of natural logarithms)" : "Variances", rows);
    TrialReport.Correlation correlation = report.correlation();
    if (correlation != null && correlation.rho() != null) {
      lines.add(
          "  correlation over time (%s): %s"
              .formatted(correlation.structure(), number(correlation.rho())));
    }
  }

  /** None where a single unit has none to give. */
  private String limits(TrialReport.Mean mean) {
    return Double.isNaN(mean.lower()) ? "" : " (%s)".formatted(range(mean.lower(), mean.upper()));
  }

  private void addMeans() {
    List<Row> rows = new ArrayList<>();
    for (TrialReport.Mean mean : report.means()) {
      String words =
          Double.isNaN(mean.mean()) ? "not estimable" : given(mean.mean()) + limits(mean);
      String letters = mean.letters() == null ? "" : " " + mean.letters();
      rows.add(new Row(String.join(", ", mean.levels().values()), words + letters));
    }
    add(log ? "Geometric means (fitted on the log scale)" : "Means", rows);
  }

  private void addDifferences() {
    List<Row> rows = new ArrayList<>();
    for (TrialReport.Contrast own : report.contrasts()) {
      String within =
          own.within().isEmpty() ? "" : " at " + String.join(", ", own.within().values());
      String tested =
          Double.isNaN(own.pAdjusted())
              ? ", not tested"
              : " (%s), adjusted p %s"
                  .formatted(range(own.lower(), own.upper()), p(own.pAdjusted()));
      String pair = own.first() + (log ? " / " : " - ") + own.second();
      rows.add(new Row(pair + within, given(own.difference()) + tested));
      if (own.newUnit() != null) {
        rows.add(
            new Row(
                "  in a new " + String.join(" and ", own.newUnit().unit()),
                range(own.newUnit().lower(), own.newUnit().upper())));
      }
    }
    add(log ? "Ratios (differences on the log scale, turned back)" : "Differences", rows);
  }

  private void addAboveLimit() {
    List<TrialReport.Above> above = report.aboveLimit();
    if (above != null) {
      add(
          "Above the detection limit",
          above.stream()
              .map(
                  own ->
                      new Row(
                          own.factor() + " " + own.level(),
                          "%d of %d".formatted(own.above(), own.values())))
              .toList());
    }
  }

  private String range(double lower, double upper) {
    return given(lower) + " to " + given(upper);
  }

  /** A mean, difference or limit as people read it: on the log scale what it stands for. */
  private String given(double value) {
    return number(log ? Math.exp(value) : value);
  }

  private static String number(double value) {
    if (Double.isNaN(value)) {
      return "-";
    }
    boolean whole = Math.abs(value - Math.rint(value)) < 1e-9 && Math.abs(value) < 1e5;
    return String.format(Locale.ROOT, whole ? "%.0f" : "%.5g", value);
  }

  private static String p(double value) {
    return Double.isNaN(value)
        ? "-"
        : String.format(Locale.ROOT, value < 1e-4 ? "%.1e" : "%.4f", value);
  }
}
