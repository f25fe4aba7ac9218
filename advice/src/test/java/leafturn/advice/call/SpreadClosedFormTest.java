package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SpreadClosedFormTest {
  @Test
  void elevenEvenlySpacedValuesHaveTheirPercentilesOnValues() {
    double[] values = {6, 1, 11, 2, 10, 3, 9, 4, 8, 5, 7};
    assertThat(Spread.of(values)).isEqualTo(new Spread(2, 6, 10));
  }

  @Test
  void betweenValuesThePercentileIsInterpolated() {
    Spread spread = Spread.of(new double[] {10, 1, 2});
    assertThat(spread.low()).isCloseTo(1.2, within(1e-15));
    assertThat(spread.middle()).isEqualTo(2);
    assertThat(spread.high()).isCloseTo(8.4, within(1e-14));
  }

  @Test
  void oneValueIsItsOwnSpread() {
    assertThat(Spread.of(new double[] {3.7})).isEqualTo(Spread.exactly(3.7));
  }

  @Test
  void noValueHasNoSpread() {
    assertThatThrownBy(() -> Spread.of(new double[0])).hasMessageContaining("one value or more");
  }
}
