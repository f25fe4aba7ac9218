package leafturn.trials.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leafturn.trials.analysis.paired.PairedDifference.Verdict;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.Randomisation;
import org.junit.jupiter.api.Test;

/** Listed layouts of several plots on each lawn against the analysis of variance of blocks. */
class ListedLawnsClosedFormTest {
  private static final int PLOTS = 4;

  /** Of two lawns far apart, on each of which two plots bear each arm. */
  private static final double[][] VALUES = {{61, 66, 63, 70}, {81, 84, 78, 85}};

  private static Findings findings(int lawns) {
    return findings(lawns, Randomisation.free(1L));
  }

  private static Findings findings(int lawns, Randomisation randomisation) {
    List<Plot> plots = new ArrayList<>();
    List<PlotReading> readings = new ArrayList<>();
    for (int lawn = 0; lawn < lawns; lawn++) {
      for (int plot = 0; plot < PLOTS; plot++) {
        String code = "P" + lawn + plot;
        plots.add(Plot.of(code, "lawn " + lawn, arm(plot)));
        readings.add(new PlotReading(code, "day 1", 1, VALUES[lawn][plot], false));
      }
    }
    TrialFacts facts = Yards.facts(Design.LISTED, Yards.MAIN, lawns, true, randomisation);
    return Findings.of(
        facts, plots, List.of(Yards.outcome(1.0, true)), Map.of("quality", readings));
  }

  private static String arm(int plot) {
    return plot % 2 == 0 ? "collected" : "returned";
  }

  /** Variance of the error of plots within lawns, arms taken out. */
  private static double error() {
    double[] lawns = new double[2];
    double[] arms = new double[2];
    for (int lawn = 0; lawn < 2; lawn++) {
      for (int plot = 0; plot < PLOTS; plot++) {
        lawns[lawn] += VALUES[lawn][plot] / PLOTS;
        arms[plot % 2] += VALUES[lawn][plot] / PLOTS;
      }
    }
    double mean = (lawns[0] + lawns[1]) / 2;
    double squares = 0;
    for (int lawn = 0; lawn < 2; lawn++) {
      for (int plot = 0; plot < PLOTS; plot++) {
        double rest = VALUES[lawn][plot] - lawns[lawn] - arms[plot % 2] + mean;
        squares += rest * rest;
      }
    }
    return squares / 5;
  }

  @Test
  void lawnsAreKeptApart() {
    Effect effect = findings(2).outcomes().get(0).effects().get(0);
    assertThat(effect.estimated().df()).isCloseTo(5, within(1e-6));
    assertThat(effect.estimated().se()).isCloseTo(Math.sqrt(2 * error() / PLOTS), within(1e-6));
  }

  @Test
  void aListThatLeavesAnArmNoChoiceIsTold() {
    List<String> codes = List.of("P00", "P01", "P02", "P03");
    List<String> own = List.of("collected", "returned", "collected", "returned");
    List<String> mirrored = List.of("returned", "collected", "returned", "collected");
    assertThat(warnings(codes, List.of(own)))
        .anyMatch(
            each ->
                each.startsWith(
                    "In every listed layout 'collected' and 'returned' lie on the same plots:"));
    assertThat(warnings(codes, List.of(own, mirrored)))
        .noneMatch(each -> each.contains("listed layout"));
  }

  @Test
  void aListThatCanShowNothingLeavesTheVerdictOpen() {
    List<String> codes = new ArrayList<>();
    List<String> own = new ArrayList<>();
    List<String> mirrored = new ArrayList<>();
    for (int plot = 0; plot < 2 * PLOTS; plot++) {
      codes.add("P" + plot / PLOTS + plot % PLOTS);
      own.add(arm(plot));
      mirrored.add(arm(plot + 1));
    }
    for (List<List<String>> allowed : List.of(List.of(own, mirrored), allBut(mirrored))) {
      var found =
          findings(2, new Randomisation(1L, TrialFacts.Sides.LISTED, codes, allowed, List.of()))
              .outcomes()
              .get(0);
      RandomisationTest drawn = Objects.requireNonNull(found.support().randomisation());
      assertThat(drawn.leavesOpen()).isEqualTo(allowed.size() == 2);
      assertThat(found.effects().get(0).estimated().p()).isLessThan(0.05);
      assertThat(found.effects().get(0).verdict())
          .isEqualTo(allowed.size() == 2 ? Verdict.UNDECIDED : Verdict.DIFFERS);
    }
  }

  private static List<String> warnings(List<String> codes, List<List<String>> allowed) {
    return findings(1, new Randomisation(1L, TrialFacts.Sides.LISTED, codes, allowed, List.of()))
        .warnings();
  }

  @Test
  void oneLawnHasItsPlotsAlone() {
    Effect effect = findings(1).outcomes().get(0).effects().get(0);
    assertThat(effect.estimated().df()).isCloseTo(2, within(1e-6));
  }

  /**
   * Two of four plots on each of two lawns: 36 layouts, of which one is left out. Its mirror image,
   * once drawn, stands alone, and whatever is first on the list says nothing of it.
   */
  @Test
  void theLayoutThatWasDrawnSaysHowSmallPCanBe() {
    List<String> own = new ArrayList<>();
    List<String> mirrored = new ArrayList<>();
    for (int plot = 0; plot < 2 * PLOTS; plot++) {
      own.add(arm(plot));
      mirrored.add(arm(plot + 1));
    }
    List<List<String>> allowed = allBut(mirrored);
    assertThat(allowed).hasSize(35).contains(own);
    assertThat(ListedLayouts.smallestP(Yards.MAIN, own, allowed)).isEqualTo(1.0 / 35);
    List<String> paired = allowed.get(0);
    assertThat(paired).isNotEqualTo(own);
    assertThat(ListedLayouts.smallestP(Yards.MAIN, paired, allowed)).isEqualTo(2.0 / 35);
    assertThat(ListedLayouts.smallestP(Yards.MAIN, allowed)).isEqualTo(1.0 / 35);
  }

  private static List<List<String>> allBut(List<String> left) {
    List<List<String>> all = new ArrayList<>();
    for (int pattern = 0; pattern < 1 << 2 * PLOTS; pattern++) {
      if (Integer.bitCount(pattern & 15) == 2 && Integer.bitCount(pattern >> PLOTS) == 2) {
        List<String> layout = new ArrayList<>();
        for (int plot = 0; plot < 2 * PLOTS; plot++) {
          layout.add(arm(pattern >> plot));
        }
        all.add(layout);
      }
    }
    all.remove(left);
    return all;
  }
}
