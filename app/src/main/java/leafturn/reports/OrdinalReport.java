package leafturn.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.ordinal.OrdinalAnalysis;
import org.jspecify.annotations.Nullable;

/**
 * Ratings analysed on the ordinal scale, with the fields of {@link TrialReport}; those that this
 * scale does not have are null or empty, and tests carry a chi squared instead of an F.
 */
public record OrdinalReport(
    int observations,
    @Nullable Double logLikelihoodReml,
    double logLikelihood,
    List<Test> tests,
    List<TrialReport.Coefficient> coefficients,
    List<TrialReport.Variance> variances,
    @Nullable Double correlation,
    @Nullable Double residualVariance,
    List<String> boundary,
    List<TrialReport.Mean> means,
    List<TrialReport.Contrast> contrasts,
    List<String> warnings) {

  /** A likelihood ratio test of a term. */
  public record Test(
      String term,
      double numDf,
      @Nullable Double denDf,
      @Nullable Double f,
      double chiSquared,
      double p) {}

  /**
   * The report of a table under a model.
   *
   * @throws leafturn.trials.analysis.data.TrialFaultException with a sentence for each fault
   */
  public static OrdinalReport of(TrialTable table, TrialModel model) {
    List<String> repeated = TrialReport.ofRows(table, model);
    return of(OrdinalAnalysis.of(table, model), model, repeated);
  }

  private static OrdinalReport of(
      OrdinalAnalysis analysis, TrialModel model, List<String> repeated) {
    List<TrialReport.Variance> variances = new ArrayList<>();
    List<String> boundary = new ArrayList<>();
    List<String> warnings = new ArrayList<>(repeated);
    warnings.addAll(analysis.warnings());
    analysis.tests().stream()
        .filter(test -> test.untested() != null)
        .forEach(
            test -> warnings.add("%s is not tested; %s".formatted(test.term(), test.untested())));
    if (!model.random().isEmpty()) {
      List<String> within = model.random().get(0).within();
      double variance = analysis.randomSd() * analysis.randomSd();
      variances.add(new TrialReport.Variance(within, "(intercept)", null, variance));
      if (variance == 0) {
        boundary.add(String.join("*", within));
      }
    }
    if (model.compare() != null) {
      warnings.add("On the ordinal scale no means are compared; see the coefficients.");
    }
    return new OrdinalReport(
        analysis.observations(),
        null,
        analysis.logLikelihood(),
        analysis.tests().stream()
            .map(test -> new Test(test.term(), test.df(), null, null, test.chiSquared(), test.p()))
            .toList(),
        analysis.coefficients().stream()
            .map(own -> new TrialReport.Coefficient(own.name(), own.estimate(), own.se()))
            .toList(),
        variances,
        null,
        null,
        boundary,
        List.of(),
        List.of(),
        warnings);
  }

  /** The report in words, line by line. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(Locale.ROOT, "%d ratings; log likelihood %.6g", observations, logLikelihood));
    lines.add("");
    lines.add("Tests (likelihood ratio, without each term)");
    for (Test test : tests) {
      String found =
          Double.isNaN(test.p)
              ? "not tested"
              : String.format(
                  Locale.ROOT,
                  "chi squared %.5g on %.0f df, p %.3g",
                  test.chiSquared,
                  test.numDf,
                  test.p);
      lines.add(String.format(Locale.ROOT, "  %-28s %s", test.term, found));
    }
    lines.add("");
    lines.add("Coefficients (logits; thresholds first)");
    for (TrialReport.Coefficient own : coefficients) {
      String se =
          Double.isNaN(own.se()) ? "no se" : String.format(Locale.ROOT, "se %.3g", own.se());
      lines.add(String.format(Locale.ROOT, "  %-28s %.5g (%s)", own.name(), own.estimate(), se));
    }
    for (TrialReport.Variance own : variances) {
      lines.add("");
      lines.add(
          String.format(
              Locale.ROOT,
              "Variance between %s: %.5g",
              String.join(" by ", own.within()),
              own.variance()));
    }
    if (!warnings.isEmpty()) {
      lines.add("");
      warnings.forEach(warning -> lines.add("Note: " + warning));
    }
    return lines;
  }
}
