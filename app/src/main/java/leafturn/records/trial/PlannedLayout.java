package leafturn.records.trial;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.InputException;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.Design;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.LaidTrial;
import leafturn.trials.findings.Plot;
import leafturn.trials.findings.TrialFacts;
import leafturn.trials.findings.TrialFacts.Randomisation;
import leafturn.trials.findings.TrialFacts.Sides;

/** The layout of a plan in the terms of its findings. */
final class PlannedLayout {
  private final TrialPlan plan;

  private PlannedLayout(TrialPlan plan) {
    this.plan = plan;
  }

  /**
   * The layout that the plan's seed draws.
   *
   * @throws InputException where the lawns have no room for it
   */
  static TrialLayout draw(TrialPlan plan) {
    try {
      return TrialLayout.of(plan);
    } catch (NoRoomException none) {
      throw new InputException("The layout cannot be drawn: " + none.getMessage());
    }
  }

  /** What findings need of a layout. */
  static LaidTrial of(TrialPlan plan, TrialLayout layout) {
    PlannedLayout planned = new PlannedLayout(plan);
    List<Plot> plots = TrialValues.plots(layout);
    return new LaidTrial(
        planned.design(plots), planned.unitWord(), plots, planned.randomisation(plots));
  }

  private String unitWord() {
    return switch (plan.arrangement().design()) {
      case SPLIT_YARD -> "yard";
      case LISTED, LATIN_SQUARE -> "lawn";
      case RANDOMISED_BLOCK, SPLIT_PLOT, STRIP_PLOT -> "block";
      case PAIRED_STRIPS -> "pair";
    };
  }

  private TrialFacts.Design design(List<Plot> plots) {
    return switch (plan.arrangement().design()) {
      case SPLIT_YARD, RANDOMISED_BLOCK, PAIRED_STRIPS -> TrialFacts.Design.UNITS;
      case LATIN_SQUARE -> TrialFacts.Design.LATIN_SQUARE;
      case SPLIT_PLOT -> TrialFacts.Design.SPLIT_PLOT;
      case STRIP_PLOT -> TrialFacts.Design.STRIP_PLOT;
      case LISTED -> holdsEachOnce(plots) ? TrialFacts.Design.UNITS : TrialFacts.Design.LISTED;
    };
  }

  private boolean holdsEachOnce(List<Plot> plots) {
    long units = plots.stream().map(Plot::unit).distinct().count();
    long pairs = plots.stream().map(plot -> List.of(plot.unit(), plot.arm())).distinct().count();
    int arms = plan.treatments().arms().size();
    return plots.size() == units * arms && pairs == plots.size();
  }

  private Randomisation randomisation(List<Plot> plots) {
    Arrangement arrangement = plan.arrangement();
    List<String> codes = plots.stream().map(Plot::code).toList();
    boolean balanced =
        arrangement.design() == Design.SPLIT_YARD
            && arrangement.sides() == Arrangement.Sides.BALANCED;
    Sides sides =
        switch (arrangement.design()) {
          case SPLIT_YARD -> balanced ? Sides.BALANCED : Sides.FREE;
          case RANDOMISED_BLOCK, SPLIT_PLOT, STRIP_PLOT, PAIRED_STRIPS -> Sides.FREE;
          case LISTED -> Sides.LISTED;
          case LATIN_SQUARE -> Sides.OTHER;
        };
    return new Randomisation(
        plan.seed(), sides, codes, arrangement.allowedLayouts(), pairsTogether());
  }

  /** On each lawn one coin lays two pairs of strips, as ABBA or BAAB. */
  private List<List<String>> pairsTogether() {
    List<List<String>> together = new ArrayList<>();
    if (plan.arrangement().design() != Design.PAIRED_STRIPS) {
      return together;
    }
    int onLawn = plan.arrangement().blocks();
    for (int lawn = 0; lawn < plan.lawns().size(); lawn++) {
      for (int pair = 1; pair + 1 <= onLawn; pair += 2) {
        int block = lawn * onLawn + pair;
        together.add(List.of("pair " + block, "pair " + (block + 1)));
      }
    }
    return together;
  }
}
