package leafturn.trials.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import leafturn.trials.design.PlanCheck.Finding;

/** Says whether treatments and lawns fit the design that was chosen. */
final class ArrangementCheck {
  private static final int FEWEST_IN_SQUARE = 3;
  private static final int FEWEST_BLOCKS = 2;
  private static final int FEWEST_BALANCED = 8;

  private final Treatments treatments;
  private final Arrangement arrangement;
  private final int lawns;
  private final List<Finding> findings = new ArrayList<>();

  private ArrangementCheck(Treatments treatments, Arrangement arrangement, int lawns) {
    this.treatments = treatments;
    this.arrangement = arrangement;
    this.lawns = lawns;
  }

  static List<Finding> of(Treatments treatments, Arrangement arrangement, int lawns) {
    ArrangementCheck check = new ArrangementCheck(treatments, arrangement, lawns);
    if (treatments.arms().size() >= Treatments.FEWEST && lawns > 0) {
      check.arms();
      check.sides();
      check.secondFactor();
      check.blocks();
      check.allowedLayouts();
    }
    check.guard();
    return check.findings;
  }

  private String word() {
    return arrangement.design().word();
  }

  private void arms() {
    int arms = treatments.arms().size();
    boolean pairs =
        arrangement.design() == Design.SPLIT_YARD || arrangement.design() == Design.PAIRED_STRIPS;
    if (pairs && arms != 2) {
      add(
          "design",
          "%s compares two treatments, and there are %d; take randomised-block, with a block on"
              + " each lawn.",
          word(),
          arms);
    }
    if (arrangement.design() == Design.LATIN_SQUARE) {
      if (arms < FEWEST_IN_SQUARE) {
        add(
            "design",
            "a Latin square of two treatments leaves no degree of freedom for the error;"
                + " take randomised-block.");
      }
      if (lawns != 1) {
        add("lawns", "a Latin square lies on one lawn, and there are %d.", lawns);
      }
    }
  }

  /** Below eight yards, sides given out equally leave chance too few ways to be convincing. */
  private void sides() {
    if (arrangement.sides() == Arrangement.Sides.BALANCED && lawns < FEWEST_BALANCED) {
      add(
          "sides",
          "balanced sides need %d yards or more, and there %s %d; take coin.",
          FEWEST_BALANCED,
          lawns == 1 ? "is" : "are",
          lawns);
    }
  }

  private void secondFactor() {
    boolean given = treatments.secondFactor() != null;
    if (arrangement.design().hasSecondFactor() && !given) {
      add(
          "secondFactor",
          "%s needs a second factor; name it, and its levels in secondArms.",
          word());
    } else if (!arrangement.design().hasSecondFactor() && given) {
      add("secondFactor", "%s has one factor; take split-plot or strip-plot for two.", word());
    }
  }

  private void blocks() {
    int blocks = arrangement.blocks();
    if (arrangement.design() == Design.PAIRED_STRIPS) {
      if (blocks < 1 || blocks > Arrangement.MOST_BLOCKS) {
        add("pairs", "there are %d; give 1 to %d on each lawn.", blocks, Arrangement.MOST_BLOCKS);
      }
    } else if (arrangement.design().countsBlocks()) {
      if (blocks < FEWEST_BLOCKS || blocks > Arrangement.MOST_BLOCKS) {
        add(
            "blocks",
            "there %s %d; give %d to %d.",
            blocks == 1 ? "is" : "are",
            blocks,
            FEWEST_BLOCKS,
            Arrangement.MOST_BLOCKS);
      } else if (blocks % lawns != 0) {
        add(
            "blocks",
            "%d blocks cannot be shared equally by %d lawns; give a multiple of %d.",
            blocks,
            lawns,
            lawns);
      }
    }
  }

  private void allowedLayouts() {
    List<List<String>> layouts = arrangement.allowedLayouts();
    if (arrangement.design() != Design.LISTED) {
      if (!layouts.isEmpty()) {
        add("allowedLayouts", "%s draws from no list; take the design listed.", word());
      }
      return;
    }
    if (layouts.size() < 2 || layouts.size() > Arrangement.MOST_LAYOUTS) {
      add(
          "allowedLayouts",
          "it holds %d; give 2 to %d layouts, or nothing is left to chance.",
          layouts.size(),
          Arrangement.MOST_LAYOUTS);
    }
    if (!layouts.isEmpty()) {
      plots(layouts.get(0).size());
    }
    Set<List<String>> seen = new HashSet<>();
    for (int i = 0; i < layouts.size() && findings.isEmpty(); i++) {
      layout(i, layouts.get(i), layouts.get(0).size());
      if (!seen.add(layouts.get(i))) {
        add(
            "allowedLayouts",
            "layout %d stands in the list already, as layout %d; keep one of them.",
            i + 1,
            layouts.indexOf(layouts.get(i)) + 1);
      }
    }
  }

  private void plots(int plots) {
    int arms = treatments.arms().size();
    if (plots < arms) {
      add(
          "allowedLayouts",
          "%d treatments cannot stand on %d plots; give at least %d.",
          arms,
          plots,
          arms);
    } else if (plots % lawns != 0) {
      add("allowedLayouts", "%d plots cannot be shared equally by %d lawns.", plots, lawns);
    } else if (arrangement.blocks() < 1
        || plots % arrangement.blocks() != 0
        || arrangement.blocks() % lawns != 0) {
      add(
          "blocks",
          "%d plots on %d lawns cannot be shared equally by %d blocks.",
          plots,
          lawns,
          arrangement.blocks());
    }
  }

  private void layout(int index, List<String> layout, int plots) {
    if (layout.size() != plots) {
      add(
          "allowedLayouts",
          "layout %d has %d plots and the first %d; give them the same.",
          index + 1,
          layout.size(),
          plots);
    }
    for (String arm : new HashSet<>(layout)) {
      if (!treatments.names().contains(arm)) {
        add(
            "allowedLayouts",
            "layout %d has \"%s\", which is none of the treatments %s.",
            index + 1,
            arm,
            String.join(", ", treatments.names()));
      }
    }
    for (String arm : treatments.names()) {
      if (!layout.contains(arm)) {
        add("allowedLayouts", "layout %d has no plot of \"%s\".", index + 1, arm);
      }
    }
  }

  private void guard() {
    PlotRule plots = arrangement.plots();
    if (arrangement.design() != Design.SPLIT_YARD && plots.passes() <= 2 * plots.guardPasses()) {
      add(
          "plots",
          "of %d passes, %d on each side are guard, and nothing is left to measure; give at least"
              + " %d passes.",
          plots.passes(),
          plots.guardPasses(),
          2 * plots.guardPasses() + 1);
    }
  }

  private void add(String field, String sentence, Object... values) {
    findings.add(new Finding(field, sentence.formatted(values)));
  }
}
