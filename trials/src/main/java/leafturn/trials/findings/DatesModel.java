package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.ModelFrame;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.inference.DifferencesOverTimes;
import leafturn.trials.analysis.inference.Estimate;
import leafturn.trials.analysis.inference.KenwardRoger;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.analysis.mixed.MixedModel;
import leafturn.trials.analysis.model.OverTime.Correlation;
import leafturn.trials.analysis.paired.PairedDifference.Interval;
import leafturn.trials.analysis.paired.SeasonSummary;
import leafturn.trials.design.Contrast;
import leafturn.trials.findings.TrialFacts.Design;
import org.jspecify.annotations.Nullable;

/**
 * The mixed model of all dates, with the correlation between dates that fits best.
 *
 * @param candidates that the data bear, by their criterion
 * @param chosen the one with the smallest
 * @param tests of the fixed terms, by Kenward and Roger
 * @param variances of the random terms
 * @param residualVariance of a plot on a date; at the first date where they differ
 * @param rho correlation of neighbouring dates; null where none was fitted
 * @param boundary terms held at zero
 * @param means of the arms at each date; NaN for what cannot be estimated
 * @param differences at each date, for each planned comparison
 * @param baselineSlopesP that the slope on the baseline is the same for all arms; NaN without
 * @param warnings of the fit
 */
public record DatesModel(
    List<Candidate> candidates,
    Candidate chosen,
    List<MarginalTests.Test> tests,
    List<MixedFit.Variance> variances,
    double residualVariance,
    @Nullable Double rho,
    List<String> boundary,
    Map<String, List<Double>> means,
    List<Differences> differences,
    double baselineSlopesP,
    List<String> warnings) {
  private static final int MOST_DATES_UNSTRUCTURED = 5;
  private static final int UNITS_PER_DATE = 3;
  private static final Pattern LINE = Pattern.compile("^Line (\\d+)\\b");

  /**
   * A correlation between dates.
   *
   * @param word compound-symmetry where any two dates are related the same
   * @param aicc corrected criterion at the same fixed part; smaller is better
   * @param parameters variances and correlations
   */
  public record Candidate(String word, double aicc, int parameters) {}

  /** A difference at one date, with an interval that holds for all dates at once. */
  public record AtDate(String date, double difference, double se, double df, Interval interval) {}

  /**
   * The differences of one comparison.
   *
   * @param season their sum with the weights of the season's summary; NaN where it cannot be
   *     estimated
   */
  public record Differences(
      Contrast contrast, List<AtDate> dates, double season, double seasonSe, double seasonDf) {}

  private record Fitted(@Nullable Correlation correlation, Candidate candidate) {}

  /**
   * Fits the model; null where the data do not bear it, the reason being noted.
   *
   * @param notes get a sentence for what could not be fitted
   */
  static @Nullable DatesModel of(ModelColumns columns, SeasonSummary summary, List<String> notes) {
    TrialTable table = columns.byDate();
    List<Fitted> fitted = new ArrayList<>();
    String why = "";
    for (Correlation correlation : bearable(columns)) {
      try {
        fitted.add(fitted(columns, table, correlation));
      } catch (TrialFaultException cannot) {
        why = cannot.faults().get(0);
      }
    }
    if (fitted.isEmpty()) {
      notes.add("The model of all dates was not fitted: " + why);
      return null;
    }
    Fitted best = fitted.get(0);
    for (Fitted each : fitted) {
      best = each.candidate.aicc < best.candidate.aicc ? each : best;
    }
    return of(columns, table, fitted.stream().map(Fitted::candidate).toList(), best, summary);
  }

  /** Null stands for the same correlation between any two dates. */
  private static List<@Nullable Correlation> bearable(ModelColumns columns) {
    List<@Nullable Correlation> all = new ArrayList<>();
    all.add(null);
    double[] days = columns.table().days();
    if (days.length < 3) {
      return all;
    }
    all.add(Correlation.AR1);
    if (!isEvenlySpaced(days)) {
      all.add(Correlation.CAR1);
    }
    int units = columns.table().units().size();
    if (units >= UNITS_PER_DATE * 2) {
      all.add(Correlation.HETEROGENEOUS_AR1);
    }
    if (columns.facts().design() == Design.UNITS
        && days.length <= MOST_DATES_UNSTRUCTURED
        && units >= UNITS_PER_DATE * days.length) {
      all.add(Correlation.UNSTRUCTURED);
    }
    return all;
  }

  private static boolean isEvenlySpaced(double[] days) {
    double step = days[1] - days[0];
    for (int i = 2; i < days.length; i++) {
      if (Math.abs(days[i] - days[i - 1] - step) > 1e-9 * Math.abs(step)) {
        return false;
      }
    }
    return true;
  }

  private static Fitted fitted(
      ModelColumns columns, TrialTable table, @Nullable Correlation correlation) {
    var model = columns.ofDates(correlation, true);
    MixedFit fit = MixedModel.fit(model, ModelFrame.of(table, model));
    int dates = columns.table().dates().size();
    int parameters = fit.variances().size() + 1 + timeParameters(correlation, dates);
    String word = correlation == null ? Correlation.COMPOUND_SYMMETRY.word() : correlation.word();
    if (fit.hasTimeWithoutError()) {
      throw new TrialFaultException(
          "%s leaves a date without any error of its own.".formatted(word));
    }
    return new Fitted(correlation, new Candidate(word, aicc(fit, parameters), parameters));
  }

  private static int timeParameters(@Nullable Correlation correlation, int dates) {
    if (correlation == null) {
      return 0;
    }
    return switch (correlation) {
      case AR1, CAR1, COMPOUND_SYMMETRY -> 1;
      case HETEROGENEOUS_AR1 -> dates;
      case UNSTRUCTURED -> dates * (dates + 1) / 2 - 1;
    };
  }

  /**
   * Of the restricted likelihood, at the same fixed part.
   *
   * @source hurvichtsai1989, eq. 6
   */
  private static double aicc(MixedFit fit, int parameters) {
    double n = fit.residualFreedom();
    double rest = n - parameters - 1;
    if (!(rest > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    return -2 * fit.logLikelihood() + 2 * parameters * n / rest;
  }

  private static DatesModel of(
      ModelColumns columns,
      TrialTable table,
      List<Candidate> candidates,
      Fitted best,
      SeasonSummary summary) {
    TrialAnalysis analysis = TrialAnalysis.of(table, columns.ofDates(best.correlation, true));
    MixedFit fit = analysis.fit();
    KenwardRoger by = new KenwardRoger(fit);
    double[] weights = summary.weights(columns.table().days());
    List<Differences> differences =
        columns.facts().contrasts().stream()
            .map(contrast -> differences(contrast, columns.facts().factor(), fit, by, weights))
            .toList();
    return new DatesModel(
        candidates,
        best.candidate,
        analysis.tests(),
        fit.variances(),
        fit.residualVariance(),
        fit.rho(),
        fit.boundary(),
        means(columns.facts().factor(), fit),
        differences,
        baselineSlopesP(columns, table, best.correlation),
        analysis.warnings().stream().map(warning -> named(warning, table)).toList());
  }

  private static Map<String, List<Double>> means(String factor, MixedFit fit) {
    Map<String, List<Double>> means = new LinkedHashMap<>();
    for (String arm : fit.frame().factor(factor).levels()) {
      means.put(arm, DifferencesOverTimes.means(fit, factor, arm, ModelColumns.DATE));
    }
    return means;
  }

  /** The table is made here, so its rows are known to a reader by plot and date, not by line. */
  private static String named(String warning, TrialTable table) {
    Matcher line = LINE.matcher(warning);
    if (!line.lookingAt()) {
      return warning;
    }
    int row = table.lines().indexOf(Integer.valueOf(line.group(1)));
    String place =
        "Plot %s on %s"
            .formatted(table.cells(ModelColumns.PLOT)[row], table.cells(ModelColumns.DATE)[row]);
    return line.replaceFirst(Matcher.quoteReplacement(place));
  }

  private static Differences differences(
      Contrast contrast, String factor, MixedFit fit, KenwardRoger by, double[] weights) {
    List<String> levels = List.of(contrast.first(), contrast.second());
    DifferencesOverTimes over =
        new DifferencesOverTimes(fit, by, factor, levels, ModelColumns.DATE);
    double[] reach = over.simultaneousReach(1 - Effect.ALPHA);
    List<AtDate> dates = new ArrayList<>();
    for (int i = 0; i < reach.length; i++) {
      Estimate own = over.each().get(i);
      double wide = reach[i] * own.se();
      Interval interval = new Interval(own.value() - wide, own.value() + wide);
      dates.add(new AtDate(over.times().get(i), own.value(), own.se(), own.df(), interval));
    }
    Estimate season = over.weighted(weights);
    double none = Double.NaN;
    return season == null
        ? new Differences(contrast, dates, none, none, none)
        : new Differences(contrast, dates, season.value(), season.se(), season.df());
  }

  private static double baselineSlopesP(
      ModelColumns columns, TrialTable table, @Nullable Correlation correlation) {
    if (!columns.hasBaseline()) {
      return Double.NaN;
    }
    try {
      List<MarginalTests.Test> tests =
          TrialAnalysis.of(table, columns.ofDates(correlation, false)).tests();
      return Objects.requireNonNull(tests.get(tests.size() - 1)).p();
    } catch (TrialFaultException cannot) {
      return Double.NaN;
    }
  }
}
