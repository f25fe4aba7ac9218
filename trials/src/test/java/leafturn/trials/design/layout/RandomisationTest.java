package leafturn.trials.design.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import leafturn.trials.design.Arrangement;
import leafturn.trials.design.Design;
import leafturn.trials.design.Plans;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.TrialPlan;
import org.junit.jupiter.api.Test;

/** What every layout must be, whatever the seed. */
class RandomisationTest {
  private static final int SEEDS = 200;

  private static Map<Integer, List<Unit>> by(List<Unit> units, Function<Unit, Integer> key) {
    return units.stream().collect(Collectors.groupingBy(key));
  }

  private static List<String> arms(List<Unit> units) {
    return units.stream().map(Unit::arm).toList();
  }

  private static TrialPlan plan(Design design, int arms, int blocks, int lawns, long seed) {
    return Plans.plan(design, arms, blocks, Plans.yards(lawns), seed);
  }

  @Test
  void everyBlockHasEveryTreatmentOnce() {
    for (long seed = 0; seed < SEEDS; seed++) {
      List<Unit> units = Randomisation.of(plan(Design.RANDOMISED_BLOCK, 5, 6, 3, seed));
      assertThat(by(units, Unit::block).values())
          .hasSize(6)
          .allSatisfy(
              block ->
                  assertThat(arms(block)).containsExactlyInAnyOrder("t1", "t2", "t3", "t4", "t5"));
      assertThat(by(units, Unit::lawn).values()).allSatisfy(lawn -> assertThat(lawn).hasSize(10));
    }
  }

  @Test
  void everyRowAndColumnOfASquareHasEveryTreatmentOnce() {
    for (int size = 3; size <= 8; size++) {
      for (long seed = 0; seed < SEEDS / 4; seed++) {
        List<Unit> units = Randomisation.of(plan(Design.LATIN_SQUARE, size, size, 1, seed));
        int letters = size;
        assertThat(by(units, Unit::row).values())
            .hasSize(size)
            .allSatisfy(row -> assertThat(new HashSet<>(arms(row))).hasSize(letters));
        assertThat(by(units, Unit::column).values())
            .hasSize(size)
            .allSatisfy(column -> assertThat(new HashSet<>(arms(column))).hasSize(letters));
      }
    }
  }

  @Test
  void aStripOfASplitPlotHasOneTreatmentAndEveryLevelOfTheSecond() {
    Set<Boolean> alike = new HashSet<>();
    for (long seed = 0; seed < SEEDS; seed++) {
      List<Unit> units = Randomisation.of(plan(Design.SPLIT_PLOT, 2, 4, 2, seed));
      for (List<Unit> block : by(units, Unit::block).values()) {
        List<List<String>> levels = new ArrayList<>();
        for (List<Unit> strip : by(block, Unit::column).values()) {
          assertThat(new HashSet<>(arms(strip))).hasSize(1);
          levels.add(strip.stream().map(Unit::secondArm).toList());
          assertThat(levels.get(levels.size() - 1)).containsExactlyInAnyOrder("s1", "s2", "s3");
        }
        alike.add(levels.get(0).equals(levels.get(1)));
      }
    }
    assertThat(alike)
        .as("levels are drawn anew on each strip")
        .containsExactlyInAnyOrder(true, false);
  }

  @Test
  void aRowOfAStripPlotHasOneLevelOfTheSecondFactor() {
    for (long seed = 0; seed < SEEDS; seed++) {
      List<Unit> units = Randomisation.of(plan(Design.STRIP_PLOT, 2, 2, 1, seed));
      for (List<Unit> block : by(units, Unit::block).values()) {
        assertThat(by(block, Unit::row).values())
            .hasSize(3)
            .allSatisfy(row -> assertThat(row.stream().map(Unit::secondArm).distinct()).hasSize(1))
            .allSatisfy(row -> assertThat(arms(row)).containsExactlyInAnyOrder("t1", "t2"));
      }
    }
  }

  @Test
  void stripsGoFourByFourAsAbbaOrBaab() {
    Set<List<String>> seen = new HashSet<>();
    for (long seed = 0; seed < SEEDS; seed++) {
      List<String> arms = arms(Randomisation.of(plan(Design.PAIRED_STRIPS, 2, 3, 1, seed)));
      assertThat(arms.subList(0, 4))
          .isIn(List.of("t1", "t2", "t2", "t1"), List.of("t2", "t1", "t1", "t2"));
      assertThat(arms.subList(4, 6)).containsExactlyInAnyOrder("t1", "t2");
      seen.add(arms);
    }
    assertThat(seen).hasSize(4);
  }

  @Test
  void aCoinTurnsEachYardByItself() {
    int turned = 0;
    Set<List<String>> seen = new HashSet<>();
    for (long seed = 0; seed < 5 * SEEDS; seed++) {
      List<String> arms = arms(Randomisation.of(plan(Design.SPLIT_YARD, 2, 4, 4, seed)));
      seen.add(arms);
      turned += arms.get(0).equals("t2") ? 1 : 0;
    }
    assertThat(seen).as("all 2^4 layouts come up").hasSize(16);
    // 1,000 fair coins lie within 5 standard deviations, 79, of a half.
    assertThat(turned).isBetween(421, 579);
  }

  @Test
  void balancedSidesAreEqualButForOne() {
    for (int yards : new int[] {8, 9, 12}) {
      Set<Long> counts = new HashSet<>();
      for (long seed = 0; seed < SEEDS; seed++) {
        TrialPlan plan = plan(Design.SPLIT_YARD, 2, yards, yards, seed);
        Arrangement balanced =
            new Arrangement(
                Design.SPLIT_YARD, yards, Arrangement.Sides.BALANCED, List.of(), PlotRule.USUAL);
        counts.add(
            Randomisation.of(Plans.with(plan, balanced)).stream()
                .filter(unit -> unit.column() == 1 && unit.arm().equals("t1"))
                .count());
      }
      assertThat(counts)
          .containsExactlyInAnyOrderElementsOf(
              yards % 2 == 0 ? Set.of(yards / 2L) : Set.of(yards / 2L, yards / 2L + 1));
    }
  }

  @Test
  void balancedSidesNeedEightYards() {
    Arrangement balanced =
        new Arrangement(
            Design.SPLIT_YARD, 6, Arrangement.Sides.BALANCED, List.of(), PlotRule.USUAL);
    TrialPlan plan = plan(Design.SPLIT_YARD, 2, 6, 6, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Plans.with(plan, balanced))
        .withMessageContaining("need 8 yards or more, and there are 6");
  }

  @Test
  void aRestrictedRandomisationDrawsFromItsListAlone() {
    List<List<String>> allowed =
        List.of(
            List.of("t1", "t2", "t2", "t1", "t1", "t2"),
            List.of("t2", "t1", "t1", "t2", "t2", "t1"),
            List.of("t1", "t2", "t1", "t2", "t2", "t1"));
    Set<List<String>> seen = new HashSet<>();
    for (long seed = 0; seed < SEEDS; seed++) {
      TrialPlan plan = plan(Design.SPLIT_YARD, 2, 3, 3, seed);
      Arrangement listed =
          new Arrangement(Design.LISTED, 3, Arrangement.Sides.COIN, allowed, PlotRule.USUAL);
      seen.add(arms(Randomisation.of(Plans.with(plan, listed))));
    }
    assertThat(seen).containsExactlyInAnyOrderElementsOf(allowed);
  }

  @Test
  void armsForWhichAListDecidesNothingAreTold() {
    assertThat(FixedArms.of(List.of(List.of("a", "b", "c"), List.of("a", "c", "b"))))
        .containsExactly("a");
    assertThat(FixedArms.of(List.of(List.of("a", "b"), List.of("b", "a")))).isEmpty();
    assertThat(FixedArms.of(List.of())).isEmpty();
    List<List<String>> allowed =
        List.of(List.of("t1", "t2", "t1", "t2"), List.of("t1", "t2", "t2", "t1"));
    TrialPlan plan = plan(Design.SPLIT_YARD, 2, 2, 2, 1);
    TrialPlan listed =
        Plans.with(
            plan,
            new Arrangement(Design.LISTED, 2, Arrangement.Sides.COIN, allowed, PlotRule.USUAL));
    List<Unit> units = Randomisation.of(listed);
    assertThat(FixedArms.notes(listed, units.subList(0, 2)))
        .containsExactly(
            "In every allowed layout 't1' and 't2' lie on the same plots of this lawn: the drawing decides nothing for them, and what lies under them cannot be told from what they do.");
    assertThat(FixedArms.notes(listed, units.subList(2, 4))).isEmpty();
    assertThat(FixedArms.notes(plan, Randomisation.of(plan))).isEmpty();
  }

  @Test
  void theSameSeedGivesTheSameAndAnotherAnother() {
    TrialPlan plan = plan(Design.RANDOMISED_BLOCK, 6, 6, 1, 7);
    assertThat(Randomisation.of(plan)).isEqualTo(Randomisation.of(plan));
    assertThat(Randomisation.of(plan)).isNotEqualTo(Randomisation.of(plan.withSeed(8)));
  }
}
