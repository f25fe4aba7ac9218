package leafturn.records.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leafturn.trials.analysis.paired.SignFlipTest;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Design;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Effect;
import leafturn.trials.findings.ListedLayouts;
import leafturn.trials.observation.Confounding;
import leafturn.trials.observation.ObservedPlot;
import leafturn.trials.observation.Remark;

/** What of a layout will stand in the way of a verdict, told before anything is pegged out. */
public final class LayoutDoubts {
  private LayoutDoubts() {}

  /** The sentences; none where treatments and places can be told apart. */
  public static List<String> of(TrialLayout layout) {
    List<String> doubts = new ArrayList<>();
    listed(layout, doubts);
    paired(layout, doubts);
    if (layout.plots().stream().map(plot -> plot.unit().block()).distinct().count() > 1) {
      sides(layout, doubts);
    }
    return doubts;
  }

  /** A list that is too short, or one whose drawn layout is met by its mirror image. */
  private static void listed(TrialLayout layout, List<String> doubts) {
    List<List<String>> allowed = layout.plan().arrangement().allowedLayouts();
    if (allowed.isEmpty()) {
      return;
    }
    Contrast contrast = layout.plan().treatments().contrasts().get(0);
    double smallest = ListedLayouts.smallestP(contrast, allowed);
    List<String> arms = layout.plots().stream().map(plot -> plot.unit().arm()).toList();
    double ofDrawn = ListedLayouts.smallestP(contrast, arms, allowed);
    if (smallest > Effect.ALPHA) {
      doubts.add(
          "With %d allowed layouts the exact test cannot go below p = %.3g whichever of them is drawn and whatever is measured, so that findings will be undecided; allow more layouts, at least 20, or 40 with the mirror image of each."
              .formatted(allowed.size(), smallest));
    } else if (ofDrawn > Effect.ALPHA) {
      doubts.add(
          "The list of %d allowed layouts holds the mirror image of the one that was drawn, so that the exact test cannot go below p = %.3g, whatever is measured, and findings will be undecided (of others on the list it could reach %.3g); allow more layouts, at least 40 with the mirror image of each."
              .formatted(allowed.size(), ofDrawn, smallest));
    }
  }

  /** Two pairs of strips are laid by one coin, so that the coins may be too few. */
  private static void paired(TrialLayout layout, List<String> doubts) {
    Arrangement arrangement = layout.plan().arrangement();
    if (arrangement.design() != Design.PAIRED_STRIPS) {
      return;
    }
    int lawns = layout.plan().lawns().size();
    int coins = lawns * ((arrangement.blocks() + 1) / 2);
    double smallest = SignFlipTest.smallestP(coins);
    if (smallest > Effect.ALPHA) {
      doubts.add(
          "One coin lays two pairs of a lawn, as ABBA or BAAB: %d pairs with %d %s, with which the exact test cannot go below p = %.3g, whatever is measured, so that findings will claim no difference; it takes 6 coins, as 11 pairs on one lawn or 6 lawns have."
              .formatted(
                  lawns * arrangement.blocks(), coins, coins == 1 ? "coin" : "coins", smallest));
    }
  }

  private static void sides(TrialLayout layout, List<String> doubts) {
    List<ObservedPlot> plots = TrialGrounds.of(layout).plots();
    refusals(plots)
        .forEach(
            sentence ->
                doubts.add(
                    sentence
                        + " Findings of this layout will give no verdict: draw anew from another seed, or from a list of layouts with each treatment on both sides."));
    if (plots.stream().allMatch(plot -> plot.traits().isEmpty())) {
      refusals(inStrips(layout))
          .forEach(
              sentence ->
                  doubts.add(sentence + " It came so by chance; look whether the ground slopes."));
    }
  }

  private static List<String> refusals(List<ObservedPlot> plots) {
    return new Confounding(plots)
        .remarks(List.of()).stream()
            .filter(remark -> remark.weight() == Remark.Weight.REFUSED)
            .map(Remark::sentence)
            .toList();
  }

  /** Plots by their strip within the block. */
  private static List<ObservedPlot> inStrips(TrialLayout layout) {
    return layout.plots().stream()
        .map(
            plot ->
                new ObservedPlot(
                    plot.code(),
                    Integer.toString(plot.unit().block()),
                    plot.unit().arm(),
                    Double.NaN,
                    Map.of("strip", "strip " + plot.unit().column())))
        .toList();
  }
}
