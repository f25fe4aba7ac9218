package leafturn.trials.power;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leafturn.trials.power.DifferenceTest.Rejections;
import org.junit.jupiter.api.Test;

/** Degrees of freedom, smallest p and what cores cannot do, counted by hand. */
class DesignClosedFormTest {
  private static final DifferenceTest TEST = new DifferenceTest(0.05, 2, Rejections.BOTH_TAILS);

  private static Design of(Layout layout, int arms) {
    return Design.oneFactor(layout, arms, PlotVariance.whole(1), Sampling.ONCE);
  }

  @Test
  void smallestPByCoinAndBalanced() {
    Design yards = of(Layout.SPLIT_YARD, 2);
    assertThat(yards.smallestP(5)).isCloseTo(0.0625, within(1e-12));
    assertThat(yards.smallestP(6)).isCloseTo(0.03125, within(1e-12));
    assertThat(yards.smallestP(8)).isCloseTo(0.0078125, within(1e-12));
    assertThat(Design.smallestPBalanced(6)).isCloseTo(0.1, within(1e-12));
    assertThat(Design.smallestPBalanced(8)).isCloseTo(2.0 / 70, within(1e-12));
    assertThat(Design.smallestPBalanced(10)).isCloseTo(2.0 / 252, within(1e-12));
    assertThat(Design.smallestPBalanced(7)).isNaN();
  }

  @Test
  void smallestPOfOtherDesigns() {
    assertThat(of(Layout.RANDOMISED_BLOCK, 3).smallestP(4)).isCloseTo(1 / 8.0, within(1e-12));
    assertThat(of(Layout.RANDOMISED_BLOCK, 4).smallestP(6)).isCloseTo(1 / 32.0, within(1e-12));
    assertThat(of(Layout.INDEPENDENT_GROUPS, 2).smallestP(4)).isCloseTo(2 / 70.0, within(1e-12));
    // Twelve squares of three: the places of two letters and the same the other way round.
    assertThat(of(Layout.LATIN_SQUARE, 3).smallestP(1)).isCloseTo(2 / 12.0, within(1e-12));
    // Of four, letters lie one or three columns apart in two of three pairs: 24 times 6 places.
    assertThat(of(Layout.LATIN_SQUARE, 4).smallestP(1)).isCloseTo(2 / (1.5 * 144), within(1e-12));
    assertThat(of(Layout.LATIN_SQUARE, 3).smallestP(2)).isCloseTo(2 / 144.0, within(1e-12));
  }

  @Test
  void smallestPOfOneSide() {
    assertThat(of(Layout.SPLIT_YARD, 2).smallestOneSidedP(5)).isCloseTo(1 / 32.0, within(1e-12));
    // Of the C(14, 7) ways to give out two arms one speaks most for the expected direction.
    assertThat(of(Layout.INDEPENDENT_GROUPS, 2).smallestOneSidedP(7))
        .isCloseTo(1 / 3432.0, within(1e-12));
    assertThat(of(Layout.INDEPENDENT_GROUPS, 3).smallestOneSidedP(7))
        .isCloseTo(1 / 3432.0, within(1e-12));
  }

  @Test
  void degreesOfFreedom() {
    assertThat(of(Layout.LATIN_SQUARE, 5).degreesOfFreedom(1)).isEqualTo(12);
    assertThat(of(Layout.LATIN_SQUARE, 4).degreesOfFreedom(2)).isEqualTo(15);
    assertThat(of(Layout.RANDOMISED_BLOCK, 4).degreesOfFreedom(6)).isEqualTo(15);
    Design strips =
        new Design(
            Layout.STRIP_PLOT, 3, 4, true, 1, PlotVariance.whole(1), 0.5, 0.2, Sampling.ONCE);
    assertThat(strips.degreesOfFreedom(6)).isEqualTo(15);
    assertThat(strips.varianceOfDifference(6)).isCloseTo(2 * (0.2 + 1.0 / 3) / 6, within(1e-15));
  }

  /** Of three pairs on a lawn two share a coin; of one pair a lawn none does. */
  @Test
  void oneCoinLaysTwoPairsOfStrips() {
    Design strips = of(Layout.PAIRED_STRIPS, 2);
    assertThat(strips.onEachLawn(6).smallestP(6)).isCloseTo(2 / 8.0, within(1e-12));
    assertThat(strips.onEachLawn(3).smallestP(6)).isCloseTo(2 / 16.0, within(1e-12));
    assertThat(strips.onEachLawn(3).smallestP(7)).isCloseTo(2 / 32.0, within(1e-12));
    assertThat(strips.onEachLawn(1).smallestP(6)).isCloseTo(2 / 64.0, within(1e-12));
    assertThat(strips.onEachLawn(6).degreesOfFreedom(6)).isEqualTo(5);
  }

  /** Three lawns of four plots: twelve less three lawns and one difference of arms. */
  @Test
  void listedLawnsHoldSeveralPlotsOfAnArm() {
    Design listed = of(Layout.LISTED, 2).onEachLawn(2);
    assertThat(listed.degreesOfFreedom(3)).isEqualTo(8);
    assertThat(listed.varianceOfDifference(3)).isCloseTo(2 / 6.0, within(1e-15));
    assertThat(of(Layout.LISTED, 3).degreesOfFreedom(4)).isEqualTo(6);
    assertThat(listed.smallestP(3)).isNaN();
  }

  @Test
  void coresCannotGoBelowTheFloor() {
    PlotVariance variance = new PlotVariance(0.05, 0.1, 0.5, 0.3, 0);
    Design design = Design.splitYards(variance, new Sampling(12, 3, 1, 1));
    SizeQuestion question = new SizeQuestion(design, null, TEST, false, 0.8, 0.3, null, 0, 10);
    SizeAnswer.MoreSampling more = requireNonNull(TrialSize.of(question).more());
    assertThat(more.floor()).isCloseTo(0.1, within(1e-15));
    assertThat(more.power()).isCloseTo(0.559094, within(5e-7));
    assertThat(more.tenfoldCores()).isBetween(more.power(), more.atFloor());
    assertThat(more.tenfoldDates()).isBetween(more.power(), more.atFloor());
    double floor = TEST.power(0.3 / Math.sqrt(0.1 / 10), 9);
    assertThat(more.atFloor()).isCloseTo(floor, within(1e-12));
  }

  @Test
  void moreThanAMillionUnitsAreNoAnswer() {
    Design design = Design.splitYards(PlotVariance.whole(1), Sampling.ONCE);
    SizeQuestion question = new SizeQuestion(design, null, TEST, false, 0.8, 1e-6, null, 0, null);
    assertThat(requireNonNull(TrialSize.of(question).forDifference()).whole()).isZero();
    assertThat(requireNonNull(TrialSize.of(question).forDifference()).exact()).isInfinite();
  }

  @Test
  void whatCannotBeAskedIsRefused() {
    Design design = Design.splitYards(PlotVariance.whole(1), Sampling.ONCE);
    assertThatThrownBy(() -> new SizeQuestion(design, null, TEST, false, 0.05, 1.0, null, 0, 5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SizeQuestion(design, null, TEST, false, 0.8, 1.0, null, 0, 1))
        .hasMessageContaining("units");
    assertThatThrownBy(() -> new SizeQuestion(design, null, TEST, false, 0.8, null, 0.5, 0.5, 5))
        .hasMessageContaining("margin");
    assertThatThrownBy(() -> new DifferenceTest(0, 2, Rejections.BOTH_TAILS))
        .hasMessageContaining("alpha");
  }
}
