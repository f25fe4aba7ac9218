package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.multiplicity.AdjustedP;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.FixedArms;
import leafturn.trials.findings.TrialFacts.Design;
import org.jspecify.annotations.Nullable;

/**
 * What a trial has found.
 *
 * @param outcomes the primary one first
 * @param reach what its result may be said of
 * @param warnings that concern all outcomes
 * @param standing how far a verdict stands
 * @param keptIn the primary outcome with the readings that were left out; null where none were
 */
public record Findings(
    TrialFacts facts,
    List<OutcomeFindings> outcomes,
    Reach reach,
    List<String> warnings,
    Standing standing,
    @Nullable OutcomeFindings keptIn) {

  /** What a result may be said of. */
  public enum Reach {
    /** The season is not over: what was read so far is shown, nothing is tested. */
    NOTHING_YET,
    /** One yard split once: its two areas, not the treatment. */
    TWO_AREAS,
    /** Several pairs or blocks in one yard: the treatment in this yard. */
    THIS_YARD,
    /** Several yards: the treatment in such yards. */
    SUCH_YARDS
  }

  public Findings {
    outcomes = List.copyOf(outcomes);
    warnings = List.copyOf(warnings);
  }

  /**
   * What a trial has found.
   *
   * @param readings by the name of their outcome
   * @throws TrialFaultException with a sentence for what cannot be analysed
   */
  public static Findings of(
      TrialFacts facts,
      List<Plot> plots,
      List<Outcome> outcomes,
      Map<String, List<PlotReading>> readings) {
    long primary = outcomes.stream().filter(Outcome::primary).count();
    if (primary > 1) {
      throw new TrialFaultException(
          "%d outcomes are primary; one alone gets the verdict.".formatted(primary));
    }
    List<String> warnings = new ArrayList<>();
    List<OutcomeFindings> found = new ArrayList<>();
    for (Outcome outcome : primaryFirst(outcomes)) {
      List<PlotReading> own = readings.getOrDefault(outcome.name(), List.of());
      try {
        SeasonReadings read = SeasonReadings.of(facts, outcome, plots, own);
        found.add(new OutcomeAnalysis(facts, outcome, read).findings());
      } catch (TrialFaultException cannot) {
        if (outcomes.size() == 1) {
          throw cannot;
        }
        warnings.addAll(cannot.faults());
      }
    }
    if (found.isEmpty()) {
      throw new TrialFaultException(warnings);
    }
    addMargin(outcomes, warnings);
    List<String> fixed = FixedArms.of(facts.randomisation().allowed());
    if (!fixed.isEmpty()) {
      warnings.add(FixedArms.sentence(fixed, "listed", "plots"));
    }
    return new Findings(
        facts, screened(found), reach(facts, found), warnings, Standing.UNKNOWN, null);
  }

  /** The same by what was kept of the trial; where a verdict is refused, none is left. */
  public Findings standing(Standing kept) {
    List<OutcomeFindings> told =
        kept.refusals().isEmpty()
            ? outcomes
            : outcomes.stream().map(OutcomeFindings::withoutVerdict).toList();
    return new Findings(facts, told, reach, warnings, kept, keptIn);
  }

  /** The same beside what was found with the readings that were left out. */
  public Findings beside(Findings withAll) {
    OutcomeFindings first = withAll.outcomes.get(0);
    return new Findings(
        facts, outcomes, reach, warnings, standing, first.outcome().primary() ? first : null);
  }

  /** Units of the first outcome that were read on as many days as were planned. */
  public int unitsWhole() {
    return outcomes.get(0).unitsWhole(standing.plannedDays());
  }

  private static List<Outcome> primaryFirst(List<Outcome> outcomes) {
    List<Outcome> all = new ArrayList<>(outcomes);
    all.sort((one, other) -> Boolean.compare(other.primary(), one.primary()));
    return all;
  }

  private static void addMargin(List<Outcome> outcomes, List<String> warnings) {
    outcomes.stream()
        .filter(outcome -> outcome.primary() && outcome.margin() == null)
        .forEach(
            outcome ->
                warnings.add(
                    "No margin that matters was fixed for %s, so that equivalence cannot be judged."
                        .formatted(outcome.name())));
  }

  /** All comparisons of exploratory outcomes are screened together by Benjamini and Hochberg. */
  private static List<OutcomeFindings> screened(List<OutcomeFindings> found) {
    List<Effect> exploratory =
        found.stream()
            .filter(each -> !each.outcome().primary())
            .flatMap(each -> each.effects().stream())
            .toList();
    double[] adjusted =
        AdjustedP.benjaminiHochberg(
            exploratory.stream().mapToDouble(each -> each.estimated().p()).toArray());
    Map<Effect, Double> byEffect = new LinkedHashMap<>();
    for (int i = 0; i < adjusted.length; i++) {
      byEffect.put(exploratory.get(i), adjusted[i]);
    }
    return found.stream()
        .map(
            each ->
                each.outcome().primary()
                    ? each
                    : each.withEffects(
                        each.effects().stream()
                            .map(own -> own.adjusted(byEffect.getOrDefault(own, own.pAdjusted())))
                            .toList()))
        .toList();
  }

  private static Reach reach(TrialFacts facts, List<OutcomeFindings> found) {
    if (!facts.ended()) {
      return Reach.NOTHING_YET;
    }
    boolean single = found.get(0).table().units().size() == 1;
    if (found.get(0).areas() != null || (single && facts.design() == Design.UNITS)) {
      return Reach.TWO_AREAS;
    }
    return facts.yards() > 1 ? Reach.SUCH_YARDS : Reach.THIS_YARD;
  }
}
