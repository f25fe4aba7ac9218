package leafturn.trials.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.model.Comparison;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;

/** The mixed model that a design is usually analysed by, on the season means of its plots. */
final class UsualModel {
  private UsualModel() {}

  static SimulationQuestion.MixedAnalysis of(SizeQuestion question) {
    Design design = question.design();
    String compared = design.comparesSecond() ? "second" : "practice";
    List<Term> fixed = new ArrayList<>(List.of(Term.of("practice")));
    List<String> factors = new ArrayList<>(List.of("practice"));
    if (design.layout().hasSecondFactor()) {
      factors.add("second");
      fixed.add(Term.of("second"));
      fixed.add(Term.of("practice*second"));
    }
    boolean pair = !question.any() && design.comparedArms() > 2;
    Comparison compare =
        pair || question.margin() != null
            ? new Comparison(compared, List.of(), null, 0.95, Comparison.Multiplicity.NONE)
            : null;
    TrialModel model =
        new TrialModel(
            "value",
            TrialModel.Scale.IDENTITY,
            factors,
            List.of(),
            fixed,
            true,
            random(design.layout()),
            null,
            DegreesOfFreedom.KENWARD_ROGER,
            compare,
            Map.of());
    return new SimulationQuestion.MixedAnalysis(model, compared, pair);
  }

  private static List<RandomTerm> random(Layout layout) {
    return switch (layout) {
      case SPLIT_YARD -> List.of(RandomTerm.mean("yard"));
      case PAIRED_STRIPS -> List.of(RandomTerm.mean("pair"));
      case LISTED -> List.of(RandomTerm.mean("lawn"));
      case INDEPENDENT_GROUPS -> List.of();
      case RANDOMISED_BLOCK -> List.of(RandomTerm.mean("block"));
      case LATIN_SQUARE -> List.of(RandomTerm.mean("row"), RandomTerm.mean("column"));
      case SPLIT_PLOT -> List.of(RandomTerm.mean("block"), RandomTerm.mean("block", "practice"));
      case STRIP_PLOT ->
          List.of(
              RandomTerm.mean("block"),
              RandomTerm.mean("block", "practice"),
              RandomTerm.mean("block", "second"));
      case YARDS_AND_YEARS ->
          List.of(
              RandomTerm.mean("yard"),
              RandomTerm.mean("year"),
              RandomTerm.mean("yard", "year"),
              RandomTerm.mean("yard", "practice"),
              RandomTerm.mean("year", "practice"));
    };
  }
}
