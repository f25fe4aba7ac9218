package leafturn.trials.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** What an outcome may be. */
class OutcomeTest {
  private static Outcome rating(double margin) {
    return new Outcome(
        "quality",
        Outcome.Kind.RATING,
        "1-9",
        1.0,
        9.0,
        Outcome.Scale.IDENTITY,
        Outcome.Summary.SEASON_MEAN,
        margin,
        true);
  }

  @Test
  void aMarginOfHalfTheScaleIsNone() {
    assertThat(rating(3.9).margin()).isEqualTo(3.9);
    assertThatThrownBy(() -> rating(4))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("the margin 4 is half or more of its range from 1 to 9");
    assertThat(Outcome.isTooWide(10.0, 1000.0, Outcome.Scale.LOG, 9.9)).isFalse();
    assertThat(Outcome.isTooWide(10.0, 1000.0, Outcome.Scale.LOG, 10.1)).isTrue();
    assertThat(Outcome.isTooWide(0.0, 1000.0, Outcome.Scale.LOG, 100.0)).isFalse();
  }
}
