package leafturn.reports.trial;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.records.trial.SizeDocument;
import leafturn.records.trial.SizeDocument.UsedVariance;
import leafturn.reports.Paragraph;
import leafturn.reports.TextTable;
import leafturn.trials.power.Design;
import leafturn.trials.power.LogScale;
import leafturn.trials.power.Sampling;
import leafturn.trials.power.SimulatedPower;
import leafturn.trials.power.SimulationQuestion;
import leafturn.trials.power.SizeAnswer;
import leafturn.trials.power.SizeAnswer.AtUnits;
import org.jspecify.annotations.Nullable;

/** The size of a trial as {@code trial size} writes it; what was not asked is null. */
public record SizeReport(
    String question,
    String design,
    String units,
    @Nullable String outcome,
    String scale,
    double alpha,
    int sides,
    String rejections,
    String convention,
    List<UsedVariance> variances,
    double plotMeanVariance,
    @Nullable Double plotMeanCv,
    @Nullable Double differenceVariancePerUnit,
    SizeAnswer.@Nullable Needed neededForDifference,
    SizeAnswer.@Nullable Needed neededForEquivalence,
    @Nullable Row planned,
    SizeAnswer.@Nullable MoreSampling moreSampling,
    @Nullable Cores cores,
    @Nullable Simulation simulation,
    List<String> words,
    List<String> warnings,
    List<Row> table,
    @JsonIgnore List<String> power,
    @JsonIgnore SizeTable grid) {

  /** What a number of units can show; on the log scale with the ratios. */
  public record Row(
      @JsonUnwrapped AtUnits at,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double detectableRatio,
      @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable Double smallestMarginRatio) {
    static Row of(AtUnits at, boolean log) {
      return new Row(
          at, log ? Math.exp(at.detectable()) : null, log ? Math.exp(at.smallestMargin()) : null);
    }
  }

  /**
   * Simulated trials.
   *
   * @param seed that gives the same again
   * @param analysis how each was analysed
   */
  public record Simulation(
      long seed,
      String analysis,
      int trials,
      int notAnalysed,
      SimulatedPower.@Nullable Share found,
      SimulatedPower.@Nullable Share equivalent) {
    static @Nullable Simulation of(
        @Nullable SimulationQuestion question, @Nullable SimulatedPower simulated) {
      if (question == null || simulated == null) {
        return null;
      }
      return new Simulation(
          question.seed(),
          SimulationWords.analysis(question),
          simulated.trials(),
          simulated.notAnalysed(),
          simulated.found(),
          simulated.equivalent());
    }
  }

  /** Cores for a relative error. */
  public record Cores(double cv, double relativeError, double level, double byNormal, int byT) {}

  /**
   * The report of an answer.
   *
   * @param answer by formula; null for a design without one
   * @param simulated null where no trials were simulated
   */
  public static SizeReport of(
      SizeDocument document, @Nullable SizeAnswer answer, @Nullable SimulatedPower simulated) {
    Design design = document.size().design();
    SizeWords wording = new SizeWords(document);
    List<String> words = new ArrayList<>();
    if (answer != null) {
      words.addAll(wording.of(answer));
    }
    if (simulated != null && document.simulation() != null) {
      words.addAll(new SimulationWords(document).of(document.simulation(), simulated));
    }
    AtUnits at = answer == null ? null : answer.at();
    double plot = design.variance().ofSeasonMean(design.sampling());
    return new SizeReport(
        document.question(),
        design.layout().word(),
        design.layout().units(),
        document.outcome(),
        document.log() ? "log" : "identity",
        document.size().test().alpha(),
        document.size().test().sides(),
        document.size().test().rejections().word(),
        Paragraph.plain(wording.convention()),
        document.variances(),
        plot,
        document.log() ? LogScale.cv(plot) : null,
        answer == null ? null : design.varianceOfDifference(1),
        answer == null ? null : answer.forDifference(),
        answer == null ? null : answer.forEquivalence(),
        at == null ? null : Row.of(at, document.log()),
        answer == null ? null : answer.more(),
        cores(document.cores()),
        Simulation.of(document.simulation(), simulated),
        plain(words),
        answer == null ? List.of() : plain(wording.warnings(answer)),
        answer == null
            ? List.of()
            : answer.table().stream().map(row -> Row.of(row, document.log())).toList(),
        plain(wording.power()),
        answer == null ? new SizeTable(List.of(), List.of()) : SizeTable.of(document, answer));
  }

  private static List<String> plain(List<String> sentences) {
    return sentences.stream().map(Paragraph::plain).toList();
  }

  private static @Nullable Cores cores(SizeDocument.@Nullable CoresWanted wanted) {
    if (wanted == null) {
      return null;
    }
    return new Cores(
        wanted.cv(),
        wanted.errorFraction(),
        wanted.level(),
        Sampling.coresByNormal(wanted.cv(), wanted.errorFraction(), wanted.level()),
        Sampling.cores(wanted.cv(), wanted.errorFraction(), wanted.level()));
  }

  /** The report in words, line by line. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    if (!question.isEmpty()) {
      lines.addAll(Paragraph.of("", question));
      lines.add("");
    }
    words.forEach(sentence -> lines.addAll(Paragraph.of("- ", sentence)));
    if (cores != null) {
      lines.addAll(
          Paragraph.of(
              "- ",
              "%d cores bring their mean within %s with %s confidence, at a CV of %s."
                  .formatted(
                      cores.byT,
                      SizeNumbers.chosen(cores.relativeError),
                      SizeNumbers.chosen(cores.level),
                      SizeNumbers.chosen(cores.cv))));
    }
    lines.addAll(Paragraph.of("- ", convention));
    warnings.forEach(warning -> lines.addAll(Paragraph.of("Take care: ", warning)));
    addVariances(lines);
    addTable(lines);
    return lines.stream().map(Paragraph::plain).toList();
  }

  private void addVariances(List<String> lines) {
    lines.add("");
    lines.add(outcome == null ? "Variances" : "Variances of " + outcome);
    for (UsedVariance own : variances) {
      String range =
          Double.isNaN(own.low())
              ? ""
              : " (%s to %s)"
                  .formatted(DisplayNumber.plain(own.low()), DisplayNumber.plain(own.high()));
      lines.addAll(
          Paragraph.of(
              "  ",
              "%s: %s %s%s; %s; %s"
                  .formatted(
                      own.part(),
                      DisplayNumber.plain(own.value()),
                      own.unit(),
                      range,
                      own.status(),
                      own.source())));
    }
  }

  private void addTable(List<String> lines) {
    if (grid.rows().isEmpty()) {
      return;
    }
    lines.add("");
    power.forEach(sentence -> lines.addAll(Paragraph.of("", sentence)));
    lines.add("");
    TextTable text = new TextTable(grid.headings().toArray(String[]::new));
    grid.rows().forEach(row -> text.row(row.toArray(String[]::new)));
    lines.addAll(text.lines());
  }
}
