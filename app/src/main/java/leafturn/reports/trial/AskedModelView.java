package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.reports.OrdinalReport;
import leafturn.reports.TrialReport;
import leafturn.reports.figure.TrialDatesFigure;
import leafturn.reports.figure.TrialFormat;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.observation.DateRole;
import leafturn.trials.observation.Remark;
import org.jspecify.annotations.Nullable;

/** An analysis as its model file asked for it, as a document shows it. */
public final class AskedModelView {
  private static final double ALPHA = 0.05;
  private static final int MOST_SENTENCES = 6;

  private final TrialModel model;
  private final @Nullable TrialReport report;
  private final @Nullable OrdinalReport ordinal;
  private final List<String> ofDates;

  /** Whether treatments were replicated, so that they may be tested. */
  private final boolean tested;

  private AskedModelView(
      TrialModel model,
      @Nullable TrialReport report,
      @Nullable OrdinalReport ordinal,
      List<String> ofDates,
      boolean tested) {
    this.model = model;
    this.report = report;
    this.ordinal = ordinal;
    this.ofDates = ofDates;
    this.tested = tested;
  }

  /** An analysis by a linear mixed model. */
  public static AskedModelView of(TrialModel model, TrialReport report) {
    return new AskedModelView(model, report, null, List.of(), true);
  }

  /** An analysis of ordered classes. */
  public static AskedModelView of(TrialModel model, OrdinalReport report) {
    return new AskedModelView(model, null, report, List.of(), true);
  }

  /**
   * The same, with what is to be said of how the model takes its dates.
   *
   * @param date column of the dates; null where none is known
   */
  AskedModelView withDates(@Nullable String date) {
    if (date == null || model.scale() == TrialModel.Scale.ORDINAL) {
      return this;
    }
    List<String> remarks = DateRole.remarks(model, date).stream().map(Remark::sentence).toList();
    return new AskedModelView(model, report, ordinal, remarks, tested);
  }

  /** The same of a single yard split once, whose areas bear no test of a treatment. */
  AskedModelView withoutTests() {
    return new AskedModelView(model, report, ordinal, ofDates, false);
  }

  /** The column that is explained. */
  public String response() {
    return model.response();
  }

  /** The model in a sentence. */
  public String asked() {
    List<String> fixed = model.fixed().stream().map(Object::toString).toList();
    List<String> random = new ArrayList<>();
    for (RandomTerm term : model.random()) {
      String slopes = term.slopes().isEmpty() ? "" : " with slopes of " + term.slopes();
      random.add(String.join(" by ", term.within()) + slopes);
    }
    var overTime = model.overTime();
    return "%s (scale %s) explained by %s%s%s; degrees of freedom: %s."
        .formatted(
            model.response(),
            model.scale().word(),
            fixed.isEmpty() ? "the mean alone" : String.join(", ", fixed),
            random.isEmpty() ? "" : "; random: " + String.join(", ", random),
            overTime == null ? "" : "; correlation over time: " + overTime.correlation().word(),
            model.degreesOfFreedom().word());
  }

  private boolean isRatio() {
    return model.scale() == TrialModel.Scale.LOG;
  }

  /** What the comparisons say, the first few of them. */
  public List<String> sentences() {
    List<TrialReport.Contrast> all = contrasts();
    if (all.isEmpty()) {
      return List.of("Nothing was compared; the tests of the terms stand below.");
    }
    List<String> sentences = new ArrayList<>();
    all.stream().limit(MOST_SENTENCES).forEach(each -> sentences.add(sentence(each)));
    if (all.size() > MOST_SENTENCES) {
      sentences.add(
          all.size() == MOST_SENTENCES + 1
              ? "The other comparison stands in the table."
              : "The other %d comparisons stand in the table."
                  .formatted(all.size() - MOST_SENTENCES));
    }
    return sentences;
  }

  private String sentence(TrialReport.Contrast own) {
    String pair = "'%s' and '%s'%s".formatted(own.first(), own.second(), within(own));
    if (Double.isNaN(own.pAdjusted())) {
      return "%s cannot be compared with these data.".formatted(FindingsWords.capital(pair));
    }
    double se = own.se();
    EffectNumbers numbers = new EffectNumbers(isRatio());
    String found =
        "%s %s, %s interval %s, %s, %s"
            .formatted(
                isRatio() ? "ratio" : "difference",
                numbers.number(own.difference(), se),
                level(),
                numbers.interval(own.lower(), own.upper(), se),
                EffectWords.p(own.pAdjusted()),
                AskedTables.how(model));
    return own.pAdjusted() < ALPHA
        ? "%s differ: %s.".formatted(FindingsWords.capital(pair), found)
        : "Undecided for %s: %s.".formatted(pair, found);
  }

  /** The level of the intervals, for instance "95\u00a0%". */
  private String level() {
    var compare = model.compare();
    double fraction = compare == null ? 1 - ALPHA : compare.levelFraction();
    return DisplayNumber.plain(Math.round(1e6 * fraction) / 1e4) + " %";
  }

  static String within(TrialReport.Contrast own) {
    return own.within().isEmpty() ? "" : " at " + String.join(", ", own.within().values());
  }

  private List<TrialReport.Contrast> contrasts() {
    TrialReport own = report;
    return own == null || !tested ? List.of() : own.contrasts();
  }

  /** The comparisons with their intervals; empty where there are none. */
  public String picture(TrialFormat format) {
    List<TrialDatesFigure.Mark> marks = new ArrayList<>();
    for (TrialReport.Contrast own : contrasts()) {
      if (Double.isFinite(own.lower())) {
        String name = own.within().isEmpty() ? own.first() + " − " + own.second() : within(own);
        marks.add(
            new TrialDatesFigure.Mark(
                name.strip(), marks.size(), own.difference(), own.lower(), own.upper()));
      }
    }
    return marks.isEmpty()
        ? ""
        : new TrialDatesFigure(
                isRatio() ? "Ratio" : "Difference",
                pictureWords() + " The same values are in the table of differences.",
                marks,
                null,
                Double.NaN,
                isRatio())
            .draw(format);
  }

  /** What the picture shows. */
  public String pictureWords() {
    return "The comparisons in the order of the table, with their intervals.";
  }

  /** What a reader should know. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>(ofDates);
    if (!tested) {
      notes.add(
          "The tests and intervals of this model are left out: with one unit split once they would tell how well its areas were measured, not what a treatment does.");
    }
    if (report != null) {
      notes.addAll(report.warnings());
    }
    if (ordinal != null) {
      notes.addAll(ordinal.warnings());
    }
    return notes.stream().distinct().toList();
  }

  /** Tests, variances, means and differences, or tests and coefficients of classes. */
  public List<ShownTable> tables() {
    AskedTables tables = new AskedTables(model, level());
    TrialReport own = report;
    if (own != null) {
      return tested ? tables.of(own) : List.of(AskedTables.variances(own));
    }
    OrdinalReport classes = ordinal;
    return classes == null || !tested ? List.of() : AskedTables.of(classes);
  }
}
