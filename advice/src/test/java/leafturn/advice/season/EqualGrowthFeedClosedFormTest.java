package leafturn.advice.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import leafturn.advice.call.Spread;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Where growth is a straight line of N, the feed for equal growth is known. */
final class EqualGrowthFeedClosedFormTest {
  private static final double[] WANTED = {400, 420, 440};

  /** Grows 300 g/m2 unfed and so much more per g of N. */
  private static double[] growth(double nGPerM2, double perG) {
    return new double[] {300 + perG * nGPerM2, 320 + perG * nGPerM2, 340 + perG * nGPerM2};
  }

  private static @Nullable Spread needed(double given, double perG) {
    return new EqualGrowthFeed(n -> growth(n, perG), WANTED).from(given, growth(given, perG));
  }

  @Test
  void isFoundFromAboveAndFromBelow() {
    for (double given : new double[] {0, 5, 10, 20, 40}) {
      Spread needed = Objects.requireNonNull(needed(given, 10));
      assertThat(needed.middle()).isCloseTo(10, within(1e-9));
      assertThat(needed.low()).isCloseTo(10, within(1e-9));
    }
  }

  @Test
  void isNoneWhereTheUnfedLawnGrowsEnough() {
    EqualGrowthFeed search = new EqualGrowthFeed(n -> growth(n, 10), new double[] {250, 300, 300});

    assertThat(search.from(8, growth(8, 10))).isEqualTo(Spread.exactly(0));
  }

  @Test
  void isUnknownBeyondTheHighestFeed() {
    assertThat(needed(5, 1)).isNull();
  }

  @Test
  void isToldForEachPossibleSeason() {
    EqualGrowthFeed search = new EqualGrowthFeed(n -> growth(n, 10), new double[] {350, 420, 490});
    Spread needed = Objects.requireNonNull(search.from(4, growth(4, 10)));

    assertThat(needed.middle()).isCloseTo(10, within(1e-9));
    assertThat(needed.low()).isCloseTo(6, within(1e-9));
    assertThat(needed.high()).isCloseTo(14, within(1e-9));
  }
}
