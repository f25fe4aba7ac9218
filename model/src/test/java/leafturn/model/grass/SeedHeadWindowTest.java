package leafturn.model.grass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SeedHeadWindowTest {
  @Test
  void withoutSpreadItIsTheRateOverItsPeak() {
    assertThat(SeedHeadWindow.springFraction(AnnualBluegrassSeedHeads.peakCd(), 0))
        .isCloseTo(1, within(1e-12));
    assertThat(SeedHeadWindow.springFraction(800, 0)).isCloseTo(0.601 / 0.802, within(0.002));
    assertThat(SeedHeadWindow.springFraction(500, 0)).isZero();
  }

  @Test
  void spreadWidensTheWindowAndLowersItsTop() {
    double spread = SeedHeadWindow.WARMTH_SPREAD_FRACTION;
    assertThat(SeedHeadWindow.springFraction(520, spread)).isBetween(0.01, 0.2);
    assertThat(SeedHeadWindow.springFraction(1046, spread)).isBetween(0.9, 0.99);
    assertThat(SeedHeadWindow.springFraction(300, spread)).isZero();
    assertThat(SeedHeadWindow.springFraction(2500, spread)).isZero();
  }

  @Test
  void theAutumnFlushPeaksInMidOctoberAndHalfAYearLaterInTheSouth() {
    assertThat(SeedHeadWindow.autumnFraction(288, false)).isEqualTo(1);
    assertThat(SeedHeadWindow.autumnFraction(250, false)).isZero();
    assertThat(SeedHeadWindow.autumnFraction(330, false)).isZero();
    assertThat(SeedHeadWindow.autumnFraction(105, true)).isGreaterThan(0.95);
    assertThat(SeedHeadWindow.autumnFraction(288, true)).isZero();
  }

  @Test
  void seattleIsCoolAndMaritimeAndNewYorkIsNot() {
    double[] seattle = {5.5, 6.2, 8, 10.3, 13.8, 16.2, 19.5, 19.6, 16.8, 12, 7.8, 5};
    double[] newYork = {1, 2, 6, 12, 17, 22, 25, 24.5, 20.5, 14.5, 9, 3.5};
    double[] desert = {9, 11, 14, 18, 23, 28, 32, 31, 27, 20, 13, 9};
    assertThat(SeedHeadWindow.coolMaritime(seattle)).isTrue();
    assertThat(SeedHeadWindow.coolMaritime(newYork)).isFalse();
    assertThat(SeedHeadWindow.coolMaritime(desert)).isFalse();
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> SeedHeadWindow.springFraction(-1, 0.1)).hasMessageContaining("-1");
    assertThatThrownBy(() -> SeedHeadWindow.springFraction(1, 0.6)).hasMessageContaining("0.6");
    assertThatThrownBy(() -> SeedHeadWindow.autumnFraction(0, false)).hasMessageContaining("366");
    assertThatThrownBy(() -> SeedHeadWindow.coolMaritime(new double[3])).hasMessageContaining("3");
  }
}
