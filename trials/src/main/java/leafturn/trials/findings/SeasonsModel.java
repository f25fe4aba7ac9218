package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.inference.Estimate;
import leafturn.trials.analysis.inference.MeansAndContrasts;
import leafturn.trials.analysis.inference.NewUnit;
import leafturn.trials.analysis.multiplicity.AdjustedP;
import leafturn.trials.analysis.paired.PairedDifference.Interval;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * Planned comparisons of more than two arms, or of other designs than pairs, by the mixed model of
 * the plots' seasons with the strata of the design.
 */
final class SeasonsModel {
  private SeasonsModel() {}

  /** The effects, p by Holm and intervals by Bonferroni over the planned comparisons. */
  static List<Effect> effects(
      ModelColumns columns, double[] summaries, Outcome outcome, List<String> warnings) {
    TrialAnalysis analysis;
    try {
      analysis = TrialAnalysis.of(columns.bySeason(summaries), columns.ofSeasons());
    } catch (TrialFaultException cannot) {
      warnings.addAll(cannot.faults());
      return List.of();
    }
    warnings.addAll(analysis.fit().warnings());
    analysis
        .fit()
        .boundary()
        .forEach(
            term ->
                warnings.add(
                    "The variance of %s is best at zero and held there; its degrees of freedom are kept."
                        .formatted(term)));
    List<Effect> effects = new ArrayList<>();
    List<Contrast> planned = columns.facts().contrasts();
    for (Contrast contrast : planned) {
      Found found = found(contrast, analysis.contrasts());
      if (found == null || !(found.estimate().df() > 0)) {
        warnings.add("%s is not estimable from these data.".formatted(words(contrast)));
      } else {
        effects.add(effect(columns, summaries, contrast, found, Margins.onScale(outcome)));
        if (found.withoutNewUnit() != null) {
          warnings.add(found.withoutNewUnit());
        }
      }
    }
    return holm(effects);
  }

  private static String words(Contrast contrast) {
    return contrast.first() + " against " + contrast.second();
  }

  /** A difference, and its interval in a unit that was not in the trial. */
  private record Found(
      Estimate estimate, @Nullable Interval newUnit, @Nullable String withoutNewUnit) {
    static Found of(MeansAndContrasts.Contrast pair) {
      NewUnit.Interval other = pair.newUnit();
      return new Found(
          pair.estimate(),
          other == null ? null : new Interval(other.lower(), other.upper()),
          pair.withoutNewUnit());
    }

    Found turned() {
      return new Found(
          new Estimate(-estimate.value(), estimate.se(), estimate.df()),
          newUnit == null ? null : new Interval(-newUnit.upper(), -newUnit.lower()),
          withoutNewUnit);
    }
  }

  private static @Nullable Found found(Contrast contrast, List<MeansAndContrasts.Contrast> pairs) {
    for (MeansAndContrasts.Contrast pair : pairs) {
      if (pair.first().equals(contrast.first()) && pair.second().equals(contrast.second())) {
        return Found.of(pair);
      }
      if (pair.first().equals(contrast.second()) && pair.second().equals(contrast.first())) {
        return Found.of(pair).turned();
      }
    }
    return null;
  }

  private static Effect effect(
      ModelColumns columns, double[] summaries, Contrast contrast, Found found, double margin) {
    int comparisons = columns.facts().contrasts().size();
    Estimate estimate = found.estimate();
    Effect.Estimated estimated =
        Effect.Estimated.of(estimate.value(), estimate.se(), estimate.df(), comparisons);
    int units = PairedSeason.of(contrast, columns.table(), summaries).units().size();
    return new Effect(
        contrast,
        units,
        estimated,
        estimated.p(),
        Effect.Equivalence.of(estimated, margin, comparisons),
        Detectable.difference(estimated),
        found.newUnit(),
        null);
  }

  private static List<Effect> holm(List<Effect> effects) {
    double[] adjusted =
        AdjustedP.holm(effects.stream().mapToDouble(each -> each.estimated().p()).toArray());
    List<Effect> all = new ArrayList<>();
    for (int i = 0; i < adjusted.length; i++) {
      all.add(effects.get(i).adjusted(adjusted[i]));
    }
    return all;
  }
}
