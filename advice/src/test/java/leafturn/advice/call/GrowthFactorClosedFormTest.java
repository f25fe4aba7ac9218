package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import leafturn.model.grass.Species;
import leafturn.model.lawn.LogKeeper.Correction;
import org.junit.jupiter.api.Test;

class GrowthFactorClosedFormTest {
  private static final GrowthFactor PRIOR = GrowthFactor.unmeasured(Species.TALL_FESCUE);
  private static final LocalDate DAY = LocalDate.of(2015, 5, 1);

  @Test
  void thePriorIsOneWithTheRangeOfTheCeilingAsNineDrawsInTen() {
    assertThat(PRIOR.middle()).isEqualTo(1);
    assertThat(PRIOR.drawn(1.6449) / PRIOR.drawn(-1.6449)).isCloseTo(24.0 / 12, within(1e-3));
  }

  @Test
  void measuredRatiosAndPriorAreWeighedByTheirPrecision() {
    double prior = 1 / (PRIOR.logSd() * PRIOR.logSd());
    double one = 1 / (0.35 * 0.35);
    GrowthFactor after = PRIOR.measured(List.of(1.5, 1.5, 1.5));
    assertThat(after.logMean())
        .isCloseTo(3 * one * Math.log(1.5) / (prior + 3 * one), within(1e-12));
    assertThat(after.logSd()).isCloseTo(1 / Math.sqrt(prior + 3 * one), within(1e-12));
    assertThat(PRIOR.measured(List.of(1.5)).middle()).isBetween(1.05, 1.2);
    assertThat(PRIOR.measured(Collections.nCopies(200, 1.5)).middle()).isCloseTo(1.5, within(0.02));
    assertThat(PRIOR.measured(List.of(40.0))).isEqualTo(PRIOR.measured(List.of(3.0)));
  }

  @Test
  void whatWasExpectedRestsOnWhatWasKnownBefore() {
    LoggedGrowth logged = new LoggedGrowth();
    logged.cut(DAY, 76);
    logged.cut(DAY.plusDays(10), 76);
    logged.cut(DAY.plusDays(20), 76);
    List<Correction> heights =
        List.of(
            new Correction(DAY, 100, 110, 0), // nothing known of what it grew from
            new Correction(DAY.plusDays(10), 96, 106, 0),
            new Correction(DAY.plusDays(20), 79, 80, 0)); // too little growth to tell
    OwnGrowth shown = logged.shown(heights, PRIOR);
    assertThat(shown.measured()).isEqualTo(1);
    assertThat(shown.factor().middle()).isEqualTo(PRIOR.measured(List.of(1.5)).middle());
    OwnGrowth.PastHeight past = shown.past().get(0);
    assertThat(past.day()).isEqualTo(DAY.plusDays(10));
    assertThat(past.expectedMm().middle()).isCloseTo(96, within(1e-9));
    double sd = Math.hypot(PRIOR.logSd(), 0.35);
    assertThat(past.expectedMm().high()).isCloseTo(76 + 20 * Math.exp(1.2816 * sd), within(1e-9));
    assertThat(past.within()).isTrue();
  }

  private static OwnGrowth after(LoggedGrowth logged, Correction... heights) {
    return logged.shown(List.of(heights), PRIOR);
  }

  @Test
  void aHeightAgainstTheModelCountsWithTheLeastThatARulerTells() {
    LoggedGrowth logged = new LoggedGrowth();
    logged.cut(DAY, 76);
    OwnGrowth fast = after(logged, new Correction(DAY.plusDays(9), 79, 91, 0));
    assertThat(fast.factor().middle()).isEqualTo(PRIOR.measured(List.of(15.0 / 5)).middle());
    OwnGrowth still = after(logged, new Correction(DAY.plusDays(9), 86, 75, 0));
    assertThat(still.factor().middle()).isEqualTo(PRIOR.measured(List.of(5.0 / 10)).middle());
    assertThat(after(logged, new Correction(DAY.plusDays(9), 86, 60, 0)).measured()).isZero();
  }

  @Test
  void aHeightBetweenCutsCountsFromTheCutOrTheHeightBefore() {
    LoggedGrowth logged = new LoggedGrowth();
    logged.cut(DAY, 76);
    OwnGrowth twice =
        after(
            logged,
            new Correction(DAY.plusDays(5), 86, 91, 0),
            new Correction(DAY.plusDays(9), 101, 111, 0));
    assertThat(twice.factor().middle()).isEqualTo(PRIOR.measured(List.of(1.5, 2.0)).middle());
    OwnGrowth together =
        after(
            logged,
            new Correction(DAY.plusDays(1), 79, 78, 0),
            new Correction(DAY.plusDays(3), 85, 82, 0));
    assertThat(together.measured()).isEqualTo(1);
    assertThat(together.factor().middle()).isEqualTo(PRIOR.measured(List.of(6.0 / 10)).middle());
  }

  @Test
  void growthFromACutThatNobodyLoggedTellsNothing() {
    LoggedGrowth logged = new LoggedGrowth();
    logged.cut(DAY, Double.NaN);
    assertThat(after(logged, new Correction(DAY.plusDays(9), 90, 120, 0)))
        .isEqualTo(OwnGrowth.UNMEASURED);
  }
}
