package leafturn.reports.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.reports.figure.TrialFormat;
import leafturn.trials.analysis.mixed.MixedFit;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.DatesModel;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.OutcomeFindings;
import leafturn.trials.findings.RandomisationTest;
import leafturn.trials.findings.SelfCheck;
import leafturn.trials.observation.Sphericity;

/** What was found of one outcome, as a page or a document shows it. */
public final class OutcomeView {
  private final OutcomeFindings found;
  private final FindingsWords words;
  private final EffectWords numbers;
  private final OutcomeTables tables;
  private final OutcomeFigures figures;
  private final List<String> toldOfAll;

  /**
   * @param toldOfAll warnings that are told of the whole trial and not here again
   */
  OutcomeView(
      Findings findings, OutcomeFindings found, FindingsWords words, List<String> toldOfAll) {
    this.found = found;
    this.words = words;
    this.numbers = new EffectWords(found.outcome());
    this.tables = new OutcomeTables(findings.facts(), found);
    this.figures =
        new OutcomeFigures(findings.facts(), found, findings.standing().fixedBeforehand());
    this.toldOfAll = toldOfAll;
  }

  /** Its name with its unit. */
  public String title() {
    String unit = found.outcome().unit();
    String name = FindingsWords.capital(EffectWords.name(found.outcome()));
    return unit.isEmpty() ? name : name + ", " + unit;
  }

  /** A name that can stand in an address. */
  public String anchor() {
    return "outcome-" + found.outcome().name().replaceAll("[^A-Za-z0-9]+", "-");
  }

  /** Whether it alone gets the verdict. */
  public boolean primary() {
    return found.outcome().primary();
  }

  /** What was found, in words; empty where it is the answer of the whole trial already. */
  public String sentence() {
    String sentence = words.sentence(found);
    return sentence.equals(words.result()) ? "" : sentence;
  }

  /** How a season was summed up, and the margin. */
  public String measure() {
    String summary = AreasWords.summary(found.outcome());
    String scale =
        numbers.isRatio() ? "analysed as logarithms, told as ratios" : "analysed as measured";
    String margin = numbers.margin();
    boolean toldOfAll = margin.isEmpty() && primary(); // a warning of the trial says it
    String matters =
        margin.isEmpty() ? "; no margin was fixed" : "; margin that matters: " + margin;
    return "Each plot's %s; %s%s.".formatted(summary, scale, toldOfAll ? "" : matters);
  }

  /** Whether there are differences by date to be drawn with their intervals. */
  public boolean hasDifferences() {
    return !found.effects().isEmpty();
  }

  /** The main picture: differences with intervals and margin, or the course of the arms. */
  public String picture(TrialFormat format) {
    return hasDifferences() ? figures.differences(format) : figures.course(format);
  }

  /** What the main picture shows. */
  public String pictureWords() {
    return hasDifferences() ? figures.differencesWords() : figures.courseWords();
  }

  /** The units, each a line from arm to arm. */
  public String units(TrialFormat format) {
    return figures.units(format);
  }

  /** What the picture of the units shows. */
  public String unitsWords() {
    return figures.unitsWords();
  }

  /** The values of the main picture. */
  public ShownTable byDate() {
    return tables.byDate();
  }

  /** The season's comparisons; without rows where nothing was tested. */
  public ShownTable season() {
    return tables.season();
  }

  /** The season of each unit. */
  public ShownTable byUnit() {
    return tables.byUnit();
  }

  /** Tests and variances of the model of all dates; none where it was not fitted. */
  public List<ShownTable> model() {
    return tables.model();
  }

  /** Every value that went in, averaged over a plot and date. */
  public ShownTable values() {
    return tables.values();
  }

  /** What a reader should know, what was left out first. */
  public List<String> warnings() {
    List<String> all = new ArrayList<>(found.leftOut());
    found.warnings().stream().filter(each -> !toldOfAll.contains(each)).forEach(all::add);
    return all;
  }

  /** How sound the result is. */
  public List<String> diagnostics() {
    List<String> all = new ArrayList<>();
    all.add(
        "%s, %,d of them below their detection limit."
            .formatted(
                DisplayNumber.counted(found.table().readings(), "reading"),
                found.table().belowDetection()));
    addRandomisation(all);
    addCheck(all);
    addModel(all);
    addSphericity(all);
    addOrdinal(all);
    return all;
  }

  private void addRandomisation(List<String> all) {
    RandomisationTest drawn = found.support().randomisation();
    if (drawn == null) {
      return;
    }
    String which = drawn.listed() ? "the stored list allows" : "might have been drawn";
    String what =
        drawn.sampled()
            ? "Test of %s by %,d layouts, drawn anew by the trial's seed from the many that %s"
            : "Exact test of %s by the %,d layouts that %s";
    Contrast tested = found.pairs().contrast();
    all.add(
        (what + ": %s%s.")
            .formatted(
                "'%s' against '%s'".formatted(tested.first(), tested.second()),
                drawn.layouts(),
                which,
                EffectWords.p(drawn.p()),
                floor(drawn)));
  }

  /** The smallest p there can be, unless answer or warnings have told it. */
  private String floor(RandomisationTest drawn) {
    boolean unjudged = primary() && found.effects().get(0).verdict() == null;
    return drawn.smallestP() <= Effect.ALPHA || unjudged
        ? "; it cannot go below p = " + EffectWords.plainP(drawn.smallestP())
        : "";
  }

  private void addCheck(List<String> all) {
    SelfCheck check = found.support().selfCheck();
    // Without a mixed model of the seasons a warning says that nothing needs to agree.
    if (check != null && !(check.holds() && Double.isNaN(check.f()))) {
      all.add(
          check.holds()
              ? "Self-check: the data are balanced, and the paired result and the mixed model of one season's value for each plot agree (F = t² = %s); the F of other models, as of all dates, may differ."
                  .formatted(DisplayNumber.significant(check.f(), 4))
              : "Self-check failed: the data are balanced, but the paired result and the mixed model do not agree; do not rely on this analysis, and tell those who keep the program.");
    }
  }

  private void addModel(List<String> all) {
    DatesModel model = found.support().dates();
    if (model == null) {
      return;
    }
    if (model.candidates().size() > 1) {
      List<String> tried =
          model.candidates().stream()
              .map(each -> each.word() + " " + DisplayNumber.decimals(each.aicc(), 1))
              .toList();
      all.add(
          "Correlation between dates: %s, by the smallest corrected criterion (AICc: %s)."
              .formatted(model.chosen().word(), String.join(", ", tried)));
    }
    List<String> held = model.boundary().stream().filter(MixedFit::isHeld).toList();
    if (!held.isEmpty()) {
      all.add("Variances held at zero, as the data say: %s.".formatted(String.join(", ", held)));
    }
    model.boundary().stream()
        .filter(each -> !held.contains(each))
        .map("The likelihood is best at the boundary, not held there: %s."::formatted)
        .forEach(all::add);
    model.warnings().stream().filter(each -> each.contains("lies apart")).forEach(all::add);
  }

  private void addSphericity(List<String> all) {
    Sphericity sphericity = found.support().sphericity();
    if (sphericity != null) {
      all.add(
          sphericity.remark().sentence()
              + " The comparison of the season does not rest on it: each plot counts once.");
    }
  }

  private void addOrdinal(List<String> all) {
    var ordinal = found.support().ordinal();
    if (found.outcome().kind() == Outcome.Kind.RATING && ordinal != null) {
      all.add(
          "Ratings as ordered classes (cumulative logit): %s; share at one end of the scale %.2f."
              .formatted(
                  ordinal.isFitted() ? EffectWords.p(ordinal.p()) : "could not be fitted",
                  ordinal.shareAtEnd()));
    }
  }
}
