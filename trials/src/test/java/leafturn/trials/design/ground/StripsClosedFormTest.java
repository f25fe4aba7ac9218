package leafturn.trials.design.ground;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import leafturn.trials.design.Plans;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.TrialLawn;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

/** Strips of whole passes whose number and size can be worked out by hand. */
class StripsClosedFormTest {
  private static final double PASS_M = 0.5;
  private static final BlockShape PAIR = new BlockShape(2, 1, 0, 0);

  private static StripBlocks find(
      Geometry turf, BlockShape shape, PlotRule rule, @Nullable Double bearing, int blocks) {
    TrialLawn lawn = Plans.lawn("lawn", turf, null);
    return StripSearch.find(Surface.of(lawn, rule), shape, rule, PASS_M, bearing, blocks);
  }

  @Test
  void stripsAreWholePassesAlongTheLongerSide() {
    // 28 x 10 m can be measured: six strips of 1.5 m and 28 m along it.
    StripBlocks strips = find(Plans.rectangle(0, 0, 30, 12), PAIR, PlotRule.USUAL, null, 3);
    assertThat(strips.frame().bearingDeg()).isEqualTo(90);
    assertThat(strips.plotM()).isCloseTo(28, within(0.011));
    assertThat(strips.blocks()).hasSize(3);
    assertThat(strips.blocks().get(0).get(0).measured().getArea())
        .isCloseTo(0.5 * strips.plotM(), within(1e-6));
    assertThat(strips.blocks().get(2).get(1).plot().getArea())
        .isCloseTo(1.5 * strips.plotM(), within(1e-6));
  }

  /** Askew, strips of a rectangle would be 4 % longer; nobody mows so. */
  @Test
  void stripsRunAlongASideUnlessAnotherDirectionGivesMuchMore() {
    assertThat(
            find(Plans.rectangle(0, 0, 200, 100), PAIR, PlotRule.USUAL, null, 4)
                .frame()
                .bearingDeg())
        .isEqualTo(90);
    // On a square the diagonal of a few strips is up to 1.41 times as long as a side.
    Geometry square = Plans.rectangle(0, 0, 40, 40);
    BlockShape crossed = new BlockShape(2, 2, 0, 0.5);
    for (BlockShape shape : new BlockShape[] {PAIR, crossed}) {
      assertThat(find(square, shape, PlotRule.USUAL, null, 3).frame().bearingDeg()).isIn(0.0, 90.0);
    }
    // A staircase: a strip along a side is never longer than two steps.
    Geometry stairs =
        Plans.polygon(
            0, 0, 14, 0, 14, 6, 20, 6, 20, 12, 26, 12, 26, 18, 12, 18, 12, 12, 6, 12, 6, 6, 0, 6);
    assertThat(find(stairs, PAIR, PlotRule.USUAL, null, 2).frame().bearingDeg()).isNotIn(0.0, 90.0);
  }

  /**
   * On a small staircase both ways leave less than 1 m²; then strips that end askew gain nothing.
   */
  @Test
  void sliversAreNoReasonToMowAskew() {
    double[] stairs = {
      0, 0, 14, 0, 14, 6, 20, 6, 20, 12, 26, 12, 26, 18, 12, 18, 12, 12, 6, 12, 6, 6, 0, 6
    };
    double[] small = Arrays.stream(stairs).map(m -> 0.45 * m).toArray();
    assertThat(find(Plans.polygon(small), PAIR, PlotRule.USUAL, null, 3).frame().bearingDeg())
        .isIn(0.0, 90.0);
  }

  @Test
  void moreBlocksThanStripsFollowEachOther() {
    // Five blocks of two: three side by side, so two rows of 13.25 m and 1.5 m to turn.
    StripBlocks strips = find(Plans.rectangle(0, 0, 30, 12), PAIR, PlotRule.USUAL, 90.0, 5);
    assertThat(strips.plotM()).isCloseTo((28 - 1.5) / 2, within(0.011));
    assertThat(strips.blocks()).hasSize(5);
    assertThat(strips.spare()).isEqualTo(1);
  }

  @Test
  void plotsOfAGivenLengthAreLaidInRows() {
    PlotRule rule = new PlotRule(3, 1, 4.0, 1, 1);
    StripBlocks strips = find(Plans.rectangle(0, 0, 30, 12), PAIR, rule, 90.0, 15);
    // (28 + 1.5) / (4 + 1.5) = 5 rows of three blocks.
    assertThat(strips.blocks()).hasSize(15);
    assertThat(strips.spare()).isZero();
    assertThat(strips.blocks().get(7).get(1).measured().getArea()).isCloseTo(2, within(1e-6));
  }

  @Test
  void partsOfAPlotFollowEachOtherWithUnmeasuredEnds() {
    BlockShape split = new BlockShape(2, 3, 0, 0.5);
    StripBlocks strips = find(Plans.rectangle(0, 0, 30, 12), split, PlotRule.USUAL, 90.0, 2);
    assertThat(strips.plotM()).isCloseTo(28 / 3.0, within(0.011));
    assertThat(strips.blocks().get(0)).hasSize(6);
    assertThat(strips.blocks().get(0).get(0).measured().getArea())
        .isCloseTo(0.5 * (strips.plotM() - 1), within(1e-6));
  }

  @Test
  void aPlotThatABedSpoilsIsDroppedAndSaysWhy() {
    Geometry turf = Plans.rectangle(0, 0, 30, 12).difference(Plans.rectangle(3, 5.5, 13, 1));
    PlotRule rule = new PlotRule(3, 1, null, 1, 1);
    StripBlocks strips = find(turf, PAIR, rule, 90.0, 2);
    assertThat(strips.blocks()).hasSize(2);
    assertThat(strips.dropped()).isNotEmpty();
    assertThat(strips.unused()).isZero();
    assertThat(strips.dropped().get(0).why())
        .contains("% of its measured part can be used", "half is needed: a bed lies in it");
  }

  @Test
  void placesBesideTheBlocksAreCountedAndNotDropped() {
    // North of the two pairs a bed spoils two strips; no block needs them.
    Geometry turf = Plans.rectangle(0, 0, 30, 12).difference(Plans.rectangle(3, 8, 22, 1));
    StripBlocks strips = find(turf, PAIR, PlotRule.USUAL, 90.0, 2);
    assertThat(strips.dropped()).isEmpty();
    assertThat(strips.unused()).isPositive();
  }
}
