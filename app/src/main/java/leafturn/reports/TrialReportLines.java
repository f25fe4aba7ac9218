package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** An analysed trial in words, line by line. */
final class TrialReportLines {
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

  private void addTests() {
    lines.add("");
    lines.add("Tests (each term beside all others)");
    for (TrialReport.Test test : report.tests()) {
      lines.add(
          Double.isNaN(test.f())
              ? "  %-28s %s"
                  .formatted(test.term(), test.denDf() == 0 ? "not tested" : "not estimable")
              : "  %-28s F %s on %s and %s df, p %s"
                  .formatted(
                      test.term(),
                      number(test.f()),
                      number(test.numDf()),
                      number(test.denDf()),
                      p(test.p())));
    }
  }

  private void addVariances() {
    lines.add("");
    lines.add(log ? "Variances (log scale: of natural logarithms)" : "Variances");
    for (TrialReport.Variance own : report.variances()) {
      String effects =
          own.effect2() == null ? own.effect() : own.effect() + " with " + own.effect2();
      lines.add(
          "  %-28s %s  %s"
              .formatted(String.join("*", own.within()), number(own.variance()), effects));
    }
    lines.add("  %-28s %s".formatted("residual", number(report.residualVariance())));
    TrialReport.Correlation correlation = report.correlation();
    if (correlation != null && correlation.rho() != null) {
      lines.add(
          "  correlation over time (%s): %s"
              .formatted(correlation.structure(), number(correlation.rho())));
    }
  }

  private void addMeans() {
    lines.add("");
    lines.add(log ? "Geometric means (fitted on the log scale)" : "Means");
    for (TrialReport.Mean mean : report.means()) {
      String levels = String.join(", ", mean.levels().values());
      lines.add(
          Double.isNaN(mean.mean())
              ? "  %-28s not estimable".formatted(levels)
              : "  %-28s %s (%s to %s) %s"
                  .formatted(
                      levels,
                      given(mean.mean()),
                      given(mean.lower()),
                      given(mean.upper()),
                      mean.letters() == null ? "" : mean.letters()));
    }
  }

  private void addDifferences() {
    lines.add("");
    lines.add(log ? "Ratios (differences on the log scale, turned back)" : "Differences");
    for (TrialReport.Contrast own : report.contrasts()) {
      String within =
          own.within().isEmpty() ? "" : " at " + String.join(", ", own.within().values());
      String tested =
          Double.isNaN(own.pAdjusted())
              ? ", not tested"
              : " (%s to %s), adjusted p %s"
                  .formatted(given(own.lower()), given(own.upper()), p(own.pAdjusted()));
      lines.add(
          "  %-28s %s%s"
              .formatted(
                  own.first() + (log ? " / " : " - ") + own.second() + within,
                  given(own.difference()),
                  tested));
      if (own.newUnit() != null) {
        lines.add(
            "  %-28s %s to %s"
                .formatted(
                    "  in a new " + String.join(" and ", own.newUnit().unit()),
                    given(own.newUnit().lower()),
                    given(own.newUnit().upper())));
      }
    }
  }

  private void addAboveLimit() {
    List<TrialReport.Above> above = report.aboveLimit();
    if (above != null) {
      lines.add("");
      lines.add("Above the detection limit");
      for (TrialReport.Above own : above) {
        String level = own.factor() + " " + own.level();
        lines.add("  %-28s %d of %d".formatted(level, own.above(), own.values()));
      }
    }
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
