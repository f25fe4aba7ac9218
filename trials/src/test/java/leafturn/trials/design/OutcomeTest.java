package leafturn.trials.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What an outcome may be. */
class OutcomeTest {
  @Test
  void aMarginOfHalfTheScaleIsNone() {
    assertThat(Plans.quality(3.9).margin()).isEqualTo(3.9);
    assertThatThrownBy(() -> Plans.quality(4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the margin 4 is half or more of its range from 1 to 9");
    assertThat(Outcome.isTooWide(10.0, 1000.0, Outcome.Scale.LOG, 9.9)).isFalse();
    assertThat(Outcome.isTooWide(10.0, 1000.0, Outcome.Scale.LOG, 10.1)).isTrue();
    assertThat(Outcome.isTooWide(0.0, 1000.0, Outcome.Scale.LOG, 100.0)).isFalse();
  }
}
