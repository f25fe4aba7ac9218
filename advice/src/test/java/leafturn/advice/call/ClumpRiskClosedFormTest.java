package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ClumpRiskClosedFormTest {
  @Test
  void indexIsTheThickestLoadOverTheLimit() {
    assertThat(ClumpRisk.index(22, 1.2, 40)).isCloseTo(0.66, within(1e-15));
    assertThat(ClumpRisk.index(22, 1.2, 20)).isCloseTo(1.32, within(1e-15));
    assertThat(ClumpRisk.index(0, 2, 20)).isZero();
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThatThrownBy(() -> ClumpRisk.index(-1, 1.2, 40)).hasMessageContaining("0 g/m2 or more");
    assertThatThrownBy(() -> ClumpRisk.index(22, 0.5, 40)).hasMessageContaining("deck factor");
    assertThatThrownBy(() -> ClumpRisk.index(22, 1.2, 0)).hasMessageContaining("limit above 0");
  }
}
