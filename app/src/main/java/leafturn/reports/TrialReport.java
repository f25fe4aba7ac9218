package leafturn.reports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.MeansAndContrasts;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;
import org.jspecify.annotations.Nullable;

/** An analysed trial as {@code trial analyse} writes it; what cannot be estimated is null. */
public record TrialReport(
    int observations,
    double logLikelihoodReml,
    List<Test> tests,
    List<Coefficient> coefficients,
    List<Variance> variances,
    @Nullable Correlation correlation,
    double residualVariance,
    List<String> boundary,
    List<Mean> means,
    List<Contrast> contrasts,
    List<String> warnings) {

  /** A marginal test of a term. */
  public record Test(String term, double numDf, double denDf, double f, double p) {
    /** A test as it is written. */
    public static Test of(MarginalTests.Test test) {
      return new Test(test.term(), test.numeratorDf(), test.denominatorDf(), test.f(), test.p());
    }
  }

  /** A coefficient in treatment coding. */
  public record Coefficient(String name, double estimate, double se) {}

  /** A variance of a random effect, or a covariance of two. */
  public record Variance(
      List<String> within, String effect, @Nullable String effect2, double variance) {}

  /** The correlation over time. */
  public record Correlation(
      String structure,
      @Nullable Double rho,
      double @Nullable [][] matrix,
      double @Nullable [] sdRatios) {
    static @Nullable Correlation of(MixedFit fit) {
      OverTime overTime = fit.model().overTime();
      if (overTime == null) {
        return null;
      }
      return new Correlation(
          overTime.correlation().word(), fit.rho(), fit.timeCorrelation(), fit.sdRatios());
    }
  }

  /** A mean; on the log scale with the geometric mean it stands for. */
  public record Mean(
      Map<String, String> levels,
      double mean,
      double se,
      double df,
      double lower,
      double upper,
      @Nullable String letters,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double geometricMean) {
    static Mean of(MeansAndContrasts.Mean mean, boolean log) {
      return new Mean(
          mean.levels(),
          mean.estimate().value(),
          mean.estimate().se(),
          mean.estimate().df(),
          mean.lower(),
          mean.upper(),
          mean.letters(),
          log ? Math.exp(mean.estimate().value()) : null);
    }
  }

  /** A difference of two means; on the log scale with the ratio it stands for. */
  public record Contrast(
      String first,
      String second,
      Map<String, String> within,
      double difference,
      double se,
      double df,
      double p,
      double pAdjusted,
      double lower,
      double upper,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double ratio,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double ratioLower,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double ratioUpper) {
    static Contrast of(MeansAndContrasts.Contrast contrast, boolean log) {
      return new Contrast(
          contrast.first(),
          contrast.second(),
          contrast.within(),
          contrast.estimate().value(),
          contrast.estimate().se(),
          contrast.estimate().df(),
          contrast.estimate().p(),
          contrast.pAdjusted(),
          contrast.lower(),
          contrast.upper(),
          log ? Math.exp(contrast.estimate().value()) : null,
          log ? Math.exp(contrast.lower()) : null,
          log ? Math.exp(contrast.upper()) : null);
    }
  }

  /** The report of an analysis. */
  public static TrialReport of(TrialAnalysis analysis) {
    MixedFit fit = analysis.fit();
    boolean log = fit.model().scale() == TrialModel.Scale.LOG;
    return new TrialReport(
        fit.frame().rows(),
        fit.logLikelihood(),
        analysis.tests().stream().map(Test::of).toList(),
        analysis.coefficients().stream()
            .map(own -> new Coefficient(own.name(), own.estimate(), own.se()))
            .toList(),
        fit.variances().stream()
            .map(own -> new Variance(own.within(), own.effect(), own.effect2(), own.variance()))
            .toList(),
        Correlation.of(fit),
        fit.residualVariance(),
        fit.boundary(),
        analysis.means().stream().map(mean -> Mean.of(mean, log)).toList(),
        analysis.contrasts().stream().map(contrast -> Contrast.of(contrast, log)).toList(),
        analysis.warnings());
  }

  /** The report in words, line by line. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(
        "%d observations; restricted log likelihood %s"
            .formatted(observations, number(logLikelihoodReml)));
    lines.add("");
    lines.add("Tests (each term beside all others)");
    for (Test test : tests) {
      lines.add(
          Double.isNaN(test.f)
              ? "  %-28s not estimable".formatted(test.term)
              : "  %-28s F %s on %s and %s df, p %s"
                  .formatted(
                      test.term,
                      number(test.f),
                      number(test.numDf),
                      number(test.denDf),
                      p(test.p)));
    }
    lines.add("");
    lines.add("Variances");
    for (Variance own : variances) {
      String effects = own.effect2 == null ? own.effect : own.effect + " with " + own.effect2;
      lines.add(
          "  %-28s %s  %s".formatted(String.join("*", own.within), number(own.variance), effects));
    }
    lines.add("  %-28s %s".formatted("residual", number(residualVariance)));
    if (correlation != null && correlation.rho != null) {
      lines.add(
          "  correlation over time (%s): %s"
              .formatted(correlation.structure, number(correlation.rho)));
    }
    addMeans(lines);
    if (!warnings.isEmpty()) {
      lines.add("");
      warnings.forEach(warning -> lines.add("Note: " + warning));
    }
    return lines;
  }

  private void addMeans(List<String> lines) {
    if (means.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Means");
    for (Mean mean : means) {
      lines.add(
          Double.isNaN(mean.mean)
              ? "  %-28s not estimable".formatted(String.join(", ", mean.levels.values()))
              : "  %-28s %s (%s to %s) %s"
                  .formatted(
                      String.join(", ", mean.levels.values()),
                      number(mean.mean),
                      number(mean.lower),
                      number(mean.upper),
                      mean.letters == null ? "" : mean.letters));
    }
    lines.add("");
    lines.add("Differences");
    for (Contrast own : contrasts) {
      String within = own.within.isEmpty() ? "" : " at " + String.join(", ", own.within.values());
      lines.add(
          "  %-28s %s (%s to %s), adjusted p %s"
              .formatted(
                  own.first + " - " + own.second + within,
                  number(own.difference),
                  number(own.lower),
                  number(own.upper),
                  p(own.pAdjusted)));
    }
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
