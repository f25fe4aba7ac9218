package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.diagnostics.Grubbs;
import leafturn.trials.analysis.paired.PairedDifference;
import leafturn.trials.design.Outcome;
import leafturn.trials.findings.OutcomeFindings.Support;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.observation.ExperimentalUnits;
import leafturn.trials.observation.Sphericity;
import org.jspecify.annotations.Nullable;

/** From the readings of one outcome to what was found. */
final class OutcomeAnalysis {
  private static final double FEW_DF = ExperimentalUnits.FEW_DF;

  private final TrialFacts facts;
  private final Outcome outcome;
  private final SeasonReadings readings;
  private final List<String> warnings = new ArrayList<>();

  OutcomeAnalysis(TrialFacts facts, Outcome outcome, SeasonReadings readings) {
    this.facts = facts;
    this.outcome = outcome;
    this.readings = readings;
  }

  /** What was found. */
  OutcomeFindings findings() {
    SeasonTable table = readings.table(SeasonReadings.HALF);
    PlotSummaries summaries = PlotSummaries.of(table, outcome, facts.unitWord());
    warnings.addAll(summaries.notes());
    PairedSeason pairs = PairedSeason.of(facts.mainContrast(), table, summaries.values());
    List<Effect> effects = List.of();
    AreasDifference areas = null;
    Support support = Support.NONE;
    if (facts.ended() && readings.mayBeTested(warnings)) {
      if (isSplitOnce(table, pairs)) {
        areas = AreasDifference.of(facts.mainContrast(), outcome, table, pairs);
      } else {
        ModelColumns columns = new ModelColumns(facts, table, readings.baseline());
        effects = effects(columns, summaries.values(), pairs, warnings);
        support = support(columns, summaries.values(), pairs, effects);
        effects = judged(effects, support, isPaired(table));
        addDrawn(effects, support.randomisation());
        warnings.addAll(readings.sensitivity(effects, this::effectsAt));
      }
    }
    return new OutcomeFindings(
        outcome,
        table,
        summaries.values(),
        pairs,
        effects,
        areas,
        support,
        summaries.leftOut(),
        warnings.stream().distinct().toList());
  }

  /** Whether a single unit bears all there is, so that nothing was replicated. */
  private boolean isSplitOnce(SeasonTable table, PairedSeason pairs) {
    boolean inUnits = facts.design() == Design.UNITS;
    return inUnits && (table.units().size() == 1 || (isPaired(table) && pairs.units().size() == 1));
  }

  private boolean isPaired(SeasonTable table) {
    return facts.design() == Design.UNITS
        && table.plots().stream().map(Plot::arm).distinct().count() == 2
        && table.units().stream().allMatch(unit -> table.plotsOf(unit).size() == 2);
  }

  /** What another table would say; what is to be said of its own analysis is not of the trial's. */
  private List<Effect> effectsAt(SeasonTable table) {
    PlotSummaries summaries = PlotSummaries.of(table, outcome, facts.unitWord());
    PairedSeason pairs = PairedSeason.of(facts.mainContrast(), table, summaries.values());
    ModelColumns columns = new ModelColumns(facts, table, readings.baseline());
    return effects(columns, summaries.values(), pairs, new ArrayList<>());
  }

  private List<Effect> effects(
      ModelColumns columns, double[] summaries, PairedSeason pairs, List<String> notes) {
    if (!isPaired(columns.table())) {
      return SeasonsModel.effects(columns, summaries, outcome, notes);
    }
    PairedDifference test = pairs.test(notes);
    return test == null ? List.of() : List.of(effect(test, pairs));
  }

  private Effect effect(PairedDifference test, PairedSeason pairs) {
    Effect.Estimated found = Effect.Estimated.of(test.mean(), test.se(), test.df(), 1);
    return new Effect(
        pairs.contrast(),
        pairs.units().size(),
        found,
        found.p(),
        Effect.Equivalence.of(found, Margins.onScale(outcome), 1),
        Detectable.difference(found),
        test.newYard(1 - Effect.ALPHA),
        null);
  }

  private Support support(
      ModelColumns columns, double[] summaries, PairedSeason pairs, List<Effect> effects) {
    if (effects.isEmpty()) {
      return Support.NONE;
    }
    SeasonTable table = columns.table();
    DatesModel dates =
        table.dates().size() < 2
            ? null
            : DatesModel.of(
                columns, PlotSummaries.summary(outcome, table.dates().size()), warnings);
    addBaseline(dates);
    RandomisationTest drawn = RandomisationTest.of(facts, table, summaries);
    SelfCheck check = null;
    if (isPaired(table)) {
      PairedDifference test = PairedDifference.of(pairs.differences());
      check = SelfCheck.of(columns, summaries, test, dates, warnings);
      addApart(pairs, test);
    }
    addFewUnits(effects.get(0));
    OrdinalCheck ordinal =
        outcome.kind() == Outcome.Kind.RATING ? readings.ordinal(facts, outcome) : null;
    if (ordinal != null) {
      warnings.addAll(ordinal.notes());
    }
    List<String> treatments = table.plots().stream().map(Plot::treatment).toList();
    Sphericity alike = Sphericity.within(table.values(), treatments);
    return new Support(drawn, dates, check, ordinal, alike);
  }

  private void addBaseline(@Nullable DatesModel dates) {
    if (dates != null && dates.baselineSlopesP() < Effect.ALPHA) {
      warnings.add(
          "The slope on the baseline differs between the arms (p %.3g), so that one adjustment does not fit all; the result by pairs is without it."
              .formatted(dates.baselineSlopesP()));
    }
  }

  private void addFewUnits(Effect effect) {
    double df = effect.estimated().df();
    if (df < FEW_DF) {
      warnings.add(
          "Only %s degrees of freedom stand behind the comparison; give at least 6 %ss, better 10."
              .formatted(
                  df == Math.rint(df) ? Long.toString((long) df) : "%.1f".formatted(df),
                  facts.unitWord()));
    }
  }

  /** Where the exact test weakens the result, unless the verdict itself says that it does. */
  private void addDrawn(List<Effect> effects, @Nullable RandomisationTest drawn) {
    if (drawn == null || (effects.get(0).differs() && drawn.p() >= Effect.ALPHA)) {
      return;
    }
    Effect effect = effects.get(0);
    if (outcome.primary() && (drawn.leavesOpen() || effect.isHeldBack(drawn))) {
      return;
    }
    if (drawn.canShowNothing()) {
      warnings.add(
          "With %,d possible layouts the exact test cannot go below p = %.3g, whatever is measured."
              .formatted(drawn.layouts(), drawn.smallestP()));
    } else if (drawn.p() < Effect.ALPHA != effect.estimated().p() < Effect.ALPHA) {
      warnings.add(
          "The t test (p %.3g) and the exact test by the possible layouts (p %.3g) do not agree; take the result as weak."
              .formatted(effect.estimated().p(), drawn.p()));
    }
  }

  /** The unit whose difference lies farthest apart is named; the result is shown without it too. */
  private void addApart(PairedSeason pairs, PairedDifference test) {
    double[] differences = pairs.differences();
    if (differences.length < 3) {
      return;
    }
    int far = 0;
    for (int i = 1; i < differences.length; i++) {
      boolean farther =
          Math.abs(differences[i] - test.mean()) > Math.abs(differences[far] - test.mean());
      far = farther ? i : far;
    }
    double deviation = Math.abs(differences[far] - test.mean()) / test.sd();
    if (deviation <= Grubbs.critical(differences.length, Effect.ALPHA)) {
      return;
    }
    PairedDifference rest = pairs.without(far).test(new ArrayList<>());
    String without =
        rest == null
            ? "without it nothing is left to judge by"
            : "without it p is %.3g instead of %.3g".formatted(rest.p(), test.p());
    warnings.add(
        "%s lies apart from the others (%.1f standard deviations from the mean difference); it stays in, and %s."
            .formatted(pairs.units().get(far), deviation, without));
  }

  /**
   * The verdicts. Pairs are judged by their units alone: where these are too few for the exact test
   * to show any difference, the t test rests on the shape of the errors alone, which so few cannot
   * tell, and claims none; nor does it where a stored list of layouts is too short. To be
   * equivalent may still be shown.
   */
  private List<Effect> judged(List<Effect> effects, Support support, boolean paired) {
    if (!outcome.primary()) {
      return effects;
    }
    RandomisationTest drawn = support.randomisation();
    boolean claimsNone =
        drawn != null && (drawn.leavesOpen() || (paired && drawn.canShowNothing()));
    OrdinalCheck ordinal = support.ordinal();
    List<Effect> judged = new ArrayList<>();
    for (Effect effect : effects) {
      boolean asNumbers = effect.pAdjusted() < Effect.ALPHA;
      boolean differs = asNumbers;
      if (ordinal != null && !ordinal.isFitted()) {
        differs = asNumbers && !ordinal.counts();
        addUnfitted(ordinal);
      } else if (ordinal != null) {
        boolean asClasses = ordinal.p() < Effect.ALPHA;
        differs = ordinal.counts() ? asClasses : asNumbers && asClasses;
        addOrdinal(ordinal, asNumbers, asClasses);
      }
      judged.add(effect.judged(differs && !claimsNone));
    }
    return judged;
  }

  private void addUnfitted(OrdinalCheck ordinal) {
    if (ordinal.counts()) {
      warnings.add(
          "More than a quarter of the ratings lie at one end of the scale, where numbers mislead; as ordered classes they could not be fitted, so no difference is claimed.");
    }
  }

  private void addOrdinal(OrdinalCheck ordinal, boolean asNumbers, boolean asClasses) {
    if (ordinal.counts()) {
      warnings.add(
          "More than a quarter of the ratings lie at one end of the scale, where numbers mislead; the result as ordered classes counts (p %.3g)."
              .formatted(ordinal.p()));
    } else if (asNumbers != asClasses) {
      warnings.add(
          "Taken as numbers and as ordered classes (p %.3g) the ratings do not say the same; a difference is claimed only where both do."
              .formatted(ordinal.p()));
    }
  }
}
