package leafturn.reports;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import leafturn.records.trial.TrialModelFile.ModelAndTrial;
import leafturn.trials.analysis.CensoredAnalysis;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.censored.CensoredFit;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.inference.MeansAndContrasts;
import leafturn.trials.analysis.inference.NewUnit;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.OverTime;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.findings.AskedTrial;
import leafturn.trials.observation.DateRole;
import leafturn.trials.observation.Remark;
import leafturn.trials.observation.RepeatedKeys;
import leafturn.trials.observation.RepeatedUnits;
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
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<Above> aboveLimit,
    List<String> warnings) {
  static final String OF_LETTERS = "Means that share a letter";

  /** How many values of one level lie above their detection limit, of how many. */
  public record Above(String factor, String level, int above, int values) {}

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
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double ratioUpper,
      @JsonInclude(JsonInclude.Include.NON_NULL) NewUnit.@Nullable Interval newUnit) {
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
          log ? Math.exp(contrast.upper()) : null,
          contrast.newUnit());
    }
  }

  /**
   * The report of a table under a model: by censored likelihood where many values lie below
   * detection and the model allows it.
   *
   * @throws TrialFaultException with a sentence for each fault
   */
  public static TrialReport of(TrialTable table, TrialModel model) {
    List<String> repeated = ofRows(table, model);
    TrialReport report =
        CensoredAnalysis.isFor(table, model)
            ? of(CensoredAnalysis.of(table, model), repeated)
            : of(TrialAnalysis.of(table, model), repeated);
    return report.means.stream().anyMatch(mean -> mean.letters() != null)
        ? report.with(letters(model))
        : report;
  }

  private static String letters(TrialModel model) {
    Comparison compare = Objects.requireNonNull(model.compare());
    boolean plain = compare.multiplicity() == Comparison.Multiplicity.NONE;
    return "%s are not shown to differ (%s); that does not make them equal."
        .formatted(
            OF_LETTERS,
            plain
                ? "not adjusted for the number of comparisons"
                : "adjusted by " + compare.multiplicity().word());
  }

  /** The same with a further warning. */
  private TrialReport with(String warning) {
    return new TrialReport(
        observations,
        logLikelihoodReml,
        tests,
        coefficients,
        variances,
        correlation,
        residualVariance,
        boundary,
        means,
        contrasts,
        aboveLimit,
        joined(warnings, List.of(warning)));
  }

  /**
   * The report of a table under a model, by what is known of its trial: a single unit gets no test
   * of the treatment.
   *
   * @throws TrialFaultException with a sentence for each fault
   */
  public static TrialReport of(TrialTable table, ModelAndTrial asked) {
    TrialReport report = of(table, asked.model());
    AskedTrial trial = asked.trial();
    return trial == null ? report : OneUnit.of(report, table, trial.columns());
  }

  /**
   * What is to be said of rows that stand twice, of units that were read several times, and of
   * dates.
   *
   * @throws TrialFaultException where the model knows a plot and date once
   */
  static List<String> ofRows(TrialTable table, TrialModel model) {
    List<Remark> keys = RepeatedKeys.remarks(table, model);
    List<Remark> remarks =
        new ArrayList<>(keys.isEmpty() ? RepeatedUnits.remarks(table, model) : keys);
    remarks.addAll(DateRole.remarks(table, model));
    List<String> sentences = remarks.stream().map(Remark::sentence).toList();
    if (remarks.stream().anyMatch(each -> each.weight() == Remark.Weight.REFUSED)) {
      throw new TrialFaultException(sentences);
    }
    return sentences;
  }

  private static TrialReport of(CensoredAnalysis analysis, List<String> repeated) {
    CensoredFit fit = analysis.fit();
    boolean log = fit != null && fit.model().scale() == TrialModel.Scale.LOG;
    double scale = fit == null ? Double.NaN : fit.regression().scale();
    return new TrialReport(
        analysis.observations(),
        Double.NaN,
        analysis.tests().stream().map(Test::of).toList(),
        coefficients(analysis.coefficients()),
        List.of(),
        null,
        scale * scale,
        List.of(),
        analysis.means().stream().map(mean -> Mean.of(mean, log)).toList(),
        analysis.contrasts().stream().map(contrast -> Contrast.of(contrast, log)).toList(),
        analysis.above().stream()
            .map(own -> new Above(own.factor(), own.level(), own.above(), own.values()))
            .toList(),
        joined(repeated, analysis.warnings()));
  }

  private static List<String> joined(List<String> first, List<String> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }

  private static List<Coefficient> coefficients(
      List<leafturn.trials.analysis.fixed.Coefficient> all) {
    return all.stream().map(own -> new Coefficient(own.name(), own.estimate(), own.se())).toList();
  }

  private static TrialReport of(TrialAnalysis analysis, List<String> repeated) {
    MixedFit fit = analysis.fit();
    boolean log = fit.model().scale() == TrialModel.Scale.LOG;
    return new TrialReport(
        fit.frame().rows(),
        fit.logLikelihood(),
        analysis.tests().stream().map(Test::of).toList(),
        coefficients(analysis.coefficients()),
        fit.variances().stream()
            .map(own -> new Variance(own.within(), own.effect(), own.effect2(), own.variance()))
            .toList(),
        Correlation.of(fit),
        fit.residualVariance(),
        fit.boundary(),
        analysis.means().stream().map(mean -> Mean.of(mean, log)).toList(),
        analysis.contrasts().stream().map(contrast -> Contrast.of(contrast, log)).toList(),
        null,
        joined(repeated, analysis.warnings()));
  }

  /** The report in words, line by line. */
  public List<String> lines() {
    return new TrialReportLines(this).lines();
  }
}
