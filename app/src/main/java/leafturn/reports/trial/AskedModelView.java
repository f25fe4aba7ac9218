package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

  private AskedModelView(
      TrialModel model,
      @Nullable TrialReport report,
      @Nullable OrdinalReport ordinal,
      List<String> ofDates) {
    this.model = model;
    this.report = report;
    this.ordinal = ordinal;
    this.ofDates = ofDates;
  }

  /** An analysis by a linear mixed model. */
  public static AskedModelView of(TrialModel model, TrialReport report) {
    return new AskedModelView(model, report, null, List.of());
  }

  /** An analysis of ordered classes. */
  public static AskedModelView of(TrialModel model, OrdinalReport report) {
    return new AskedModelView(model, null, report, List.of());
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
    return new AskedModelView(model, report, ordinal, remarks);
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
          "The other %d comparisons stand in the table.".formatted(all.size() - MOST_SENTENCES));
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
        "%s %s, %s interval %s to %s, adjusted %s"
            .formatted(
                isRatio() ? "ratio" : "difference",
                numbers.number(own.difference(), se),
                level(),
                numbers.number(own.lower(), se),
                numbers.number(own.upper(), se),
                EffectWords.p(own.pAdjusted()));
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

  private static String within(TrialReport.Contrast own) {
    return own.within().isEmpty() ? "" : " at " + String.join(", ", own.within().values());
  }

  private List<TrialReport.Contrast> contrasts() {
    TrialReport own = report;
    return own == null ? List.of() : own.contrasts();
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
    if (report != null) {
      notes.addAll(report.warnings());
    }
    if (ordinal != null) {
      notes.addAll(ordinal.warnings());
    }
    return notes;
  }

  /** Tests, variances, means and differences, or tests and coefficients of classes. */
  public List<ShownTable> tables() {
    TrialReport own = report;
    if (own != null) {
      List<ShownTable> tables = new ArrayList<>(List.of(tests(own), variances(own)));
      if (!own.means().isEmpty()) {
        tables.add(means(own));
        tables.add(differences(own));
      }
      return tables;
    }
    OrdinalReport classes = ordinal;
    return classes == null ? List.of() : ofClasses(classes);
  }

  private static List<ShownTable> ofClasses(OrdinalReport report) {
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
    return List.of(
        new ShownTable(
            "Tests by likelihood ratio", List.of("Term", "Chi squared", "df", "p"), tests),
        new ShownTable(
            "Coefficients, logits", List.of("Name", "Estimate", "Standard error"), coefficients));
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

  private static ShownTable variances(TrialReport report) {
    List<List<String>> rows = new ArrayList<>();
    report
        .variances()
        .forEach(
            own -> rows.add(List.of(String.join(" by ", own.within()), number(own.variance()))));
    rows.add(List.of("residual", number(report.residualVariance())));
    return new ShownTable("Variances", List.of("Between", "Variance"), rows);
  }

  private ShownTable means(TrialReport report) {
    List<List<String>> rows = new ArrayList<>();
    for (TrialReport.Mean mean : report.means()) {
      Map<String, String> levels = mean.levels();
      rows.add(
          List.of(
              String.join(", ", levels.values()),
              number(mean.mean()),
              number(mean.lower()) + " to " + number(mean.upper())));
    }
    return new ShownTable("Means" + scale(), List.of("Of", "Mean", level() + " interval"), rows);
  }

  private ShownTable differences(TrialReport report) {
    List<List<String>> rows = new ArrayList<>();
    for (TrialReport.Contrast own : report.contrasts()) {
      rows.add(
          List.of(
              own.first() + " − " + own.second() + within(own),
              number(own.difference()),
              number(own.lower()) + " to " + number(own.upper()),
              EffectWords.plainP(own.pAdjusted())));
    }
    return new ShownTable(
        "Differences" + scale(), List.of("Of", "Difference", "Interval", "p, adjusted"), rows);
  }

  private String scale() {
    return isRatio() ? ", log scale" : "";
  }

  private static String number(double value) {
    boolean whole = Math.abs(value - Math.rint(value)) < 1e-6 && Math.abs(value) < 1e6;
    return whole ? DisplayNumber.decimals(value, 0) : DisplayNumber.significant(value, 4);
  }
}
