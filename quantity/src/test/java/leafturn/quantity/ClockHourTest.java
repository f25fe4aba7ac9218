package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class ClockHourTest {
  @Test
  void readersHaveTheClockOfTheirUnits() {
    assertThat(List.of(0, 9, 12, 13, 24).stream().map(h -> ClockHour.shown(h, Units.METRIC)))
        .containsExactly("0", "9", "12", "13", "24");
    assertThat(List.of(0, 9, 12, 13, 24).stream().map(h -> ClockHour.shown(h, Units.US)))
        .containsExactly("12 am", "9 am", "noon", "1 pm", "12 am");
    assertThatThrownBy(() -> ClockHour.shown(25, Units.US)).hasMessageContaining("25");
  }
}
