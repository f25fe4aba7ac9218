package leafturn.reports.trial;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leafturn.reports.TrialReport;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.Plot;
import leafturn.trials.findings.RandomisationTest;
import leafturn.trials.findings.SeasonTable;
import leafturn.trials.findings.TrialFacts;
import leafturn.trials.observation.Remark;
import leafturn.trials.observation.Sphericity;
import org.jspecify.annotations.Nullable;

/**
 * Findings as the document {@code results.json} of a data package; numbers stand on the scale of
 * the analysis, with ratios beside them on the log scale.
 *
 * @param reach what the result may be said of
 * @param sentence the answer
 * @param remarks what the checks of layout, readings and events found
 * @param program that worked it out
 */
public record FindingsReport(
    String trial,
    String question,
    String reach,
    String sentence,
    List<String> conclusions,
    Flow flow,
    List<OutcomeEntry> outcomes,
    Planned plan,
    List<String> warnings,
    List<RemarkEntry> remarks,
    String program) {

  /** A remark: {@code refused}, {@code warning} or {@code note}, and its sentence. */
  public record RemarkEntry(String weight, String sentence) {}

  /** Units at the beginning and at the end. */
  public record Flow(String unit, int started, int finished, int yards) {}

  /** What was fixed beforehand, and what was changed. */
  public record Planned(
      @Nullable String sha256,
      @Nullable Long seed,
      List<String> deviations,
      List<String> exclusions) {}

  /**
   * An outcome.
   *
   * @param plots season and dates of each plot
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record OutcomeEntry(
      String name,
      String kind,
      String unit,
      String scale,
      String summary,
      @Nullable Double margin,
      boolean primary,
      String sentence,
      List<EffectEntry> effects,
      @Nullable AreasEntry areas,
      @Nullable RandomisationTest randomisation,
      @Nullable DatesEntry dates,
      @Nullable CheckEntry selfCheck,
      @Nullable OrdinalEntry ordinal,
      @Nullable Sphericity sphericity,
      List<PlotEntry> plots,
      int readings,
      int belowDetection,
      List<String> leftOut,
      List<String> warnings) {}

  /** The difference between the two areas of one yard. */
  public record AreasEntry(
      String first, String second, double difference, double samplingError, int dates) {}

  /** The two ways to one result. */
  public record CheckEntry(
      double byPairs, double byDates, double tSquared, double f, boolean holds) {}

  /** Ratings as classes. */
  public record OrdinalEntry(double p, double shareAtEnd) {}

  /** A plot; {@code season} is null where its unit is left out. */
  public record PlotEntry(
      String plot, String unit, String arm, double season, Map<String, Double> dates) {}

  /**
   * The model of all dates.
   *
   * @param correlation that fits best
   * @param candidates corrected criterion of each that was tried
   */
  public record DatesEntry(
      String correlation,
      Map<String, Double> candidates,
      @Nullable Double rho,
      List<TrialReport.Test> tests,
      List<TrialReport.Variance> variances,
      double residualVariance,
      double withinPlotAndDateVariance,
      List<String> boundary,
      List<DateEntry> differences) {}

  /** A difference on a date, with an interval for all dates at once. */
  public record DateEntry(
      String first,
      String second,
      String date,
      double difference,
      double se,
      double lower,
      double upper) {}

  /**
   * @param program name and version
   */
  public static FindingsReport of(Findings findings, List<Remark> remarks, String program) {
    FindingsWords words = new FindingsWords(findings);
    TrialFacts facts = findings.facts();
    return new FindingsReport(
        facts.name(),
        facts.question(),
        switch (findings.reach()) {
          case NOTHING_YET -> "nothing yet";
          case TWO_AREAS -> "two areas";
          case THIS_YARD -> "this yard";
          case SUCH_YARDS -> "such yards";
        },
        words.headline(),
        words.conclusions(),
        new Flow(facts.unitWord(), facts.unitsStarted(), findings.unitsWhole(), facts.yards()),
        findings.outcomes().stream().map(found -> entry(found, words)).toList(),
        new Planned(
            facts.record().hash(),
            facts.randomisation().seed(),
            facts.record().deviations(),
            facts.record().exclusionRules()),
        findings.warnings(),
        remarks.stream()
            .map(
                remark ->
                    new RemarkEntry(
                        remark.weight().name().toLowerCase(Locale.ROOT), remark.sentence()))
            .toList(),
        program);
  }

  private static OutcomeEntry entry(OutcomeFindings found, FindingsWords words) {
    OutcomeFindings.Support support = found.support();
    var areas = found.areas();
    var check = support.selfCheck();
    var ordinal = support.ordinal();
    boolean log = new EffectWords(found.outcome()).isRatio();
    return new OutcomeEntry(
        found.outcome().name(),
        found.outcome().kind().word(),
        found.outcome().unit(),
        found.outcome().scale().word(),
        found.outcome().summary().word(),
        found.outcome().margin(),
        found.outcome().primary(),
        words.sentence(found),
        found.effects().stream().map(effect -> EffectEntry.of(effect, log)).toList(),
        areas == null
            ? null
            : new AreasEntry(
                areas.contrast().first(),
                areas.contrast().second(),
                areas.difference(),
                areas.samplingError(),
                areas.dates()),
        support.randomisation(),
        dates(found),
        check == null
            ? null
            : new CheckEntry(
                check.byPairs(), check.byDates(), check.tSquared(), check.f(), check.holds()),
        ordinal == null ? null : new OrdinalEntry(ordinal.p(), ordinal.shareAtEnd()),
        support.sphericity(),
        plots(found),
        found.table().readings(),
        found.table().belowDetection(),
        found.leftOut(),
        found.warnings());
  }

  private static List<PlotEntry> plots(OutcomeFindings found) {
    SeasonTable table = found.table();
    List<PlotEntry> entries = new ArrayList<>();
    for (int i = 0; i < table.plots().size(); i++) {
      Map<String, Double> dates = new LinkedHashMap<>();
      for (int date = 0; date < table.dates().size(); date++) {
        dates.put(table.dates().get(date), table.values()[i][date]);
      }
      Plot plot = table.plots().get(i);
      entries.add(new PlotEntry(plot.code(), plot.unit(), plot.arm(), found.summaries()[i], dates));
    }
    return entries;
  }

  private static @Nullable DatesEntry dates(OutcomeFindings found) {
    var model = found.support().dates();
    if (model == null) {
      return null;
    }
    Map<String, Double> candidates = new LinkedHashMap<>();
    model.candidates().forEach(each -> candidates.put(each.word(), each.aicc()));
    List<DateEntry> differences = new ArrayList<>();
    model
        .differences()
        .forEach(
            each ->
                each.dates()
                    .forEach(
                        date ->
                            differences.add(
                                new DateEntry(
                                    each.contrast().first(),
                                    each.contrast().second(),
                                    date.date(),
                                    date.difference(),
                                    date.se(),
                                    date.interval().lower(),
                                    date.interval().upper()))));
    return new DatesEntry(
        model.chosen().word(),
        candidates,
        model.rho(),
        model.tests().stream().map(TrialReport.Test::of).toList(),
        model.variances().stream()
            .map(
                own ->
                    new TrialReport.Variance(
                        own.within(), own.effect(), own.effect2(), own.variance()))
            .toList(),
        model.residualVariance(),
        found.table().withinVariance(),
        model.boundary(),
        differences);
  }
}
