package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RangeTest {
  private static final Range RAIN = new Range("rain", 0, 2000, "mm");

  @Test
  void takesBothEnds() {
    assertThat(RAIN.checked(0)).isZero();
    assertThat(RAIN.checked(2000)).isEqualTo(2000);
    assertThat(RAIN.contains(Math.nextDown(0.0))).isFalse();
    assertThat(RAIN.contains(Math.nextUp(2000.0))).isFalse();
  }

  @Test
  void saysWhatIsWrongWithAValueOutside() {
    assertThatThrownBy(() -> RAIN.checked(-0.5))
        .hasMessage("rain is -0.5 mm, but must lie from 0 to 2000 mm");
    assertThatThrownBy(() -> RAIN.checked(Double.NaN))
        .hasMessage("rain is NaN, but must lie from 0 to 2000 mm");
    assertThatThrownBy(() -> new Range("share", 0, 1, "").checked(3))
        .hasMessage("share is 3, but must lie from 0 to 1");
  }

  @Test
  void refusesARangeThatHoldsNothingOrHasNoName() {
    assertThatThrownBy(() -> new Range("rain", 2, 1, "mm")).hasMessageContaining("low <= high");
    assertThatThrownBy(() -> new Range("rain", Double.NaN, 1, "mm"))
        .hasMessageContaining("low <= high");
    assertThatThrownBy(() -> new Range(" ", 0, 1, "mm")).hasMessageContaining("name");
  }
}
