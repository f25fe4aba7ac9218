package leafturn.reports;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class UnbrokenTest {
  @Test
  void aNumberStaysWithItsUnit() {
    assertThat(Unbroken.of("39 % of 105 mm at 4 °C, 12 g/m² on 640 m²"))
        .isEqualTo("39\u00a0% of 105\u00a0mm at 4\u00a0°C, 12\u00a0g/m² on 640\u00a0m²");
    assertThat(Unbroken.of("in 3 h, 2 ft² and 30–40 mm."))
        .isEqualTo("in 3\u00a0h, 2\u00a0ft² and 30–40\u00a0mm.");
  }

  @Test
  void wordsThatBeginLikeAUnitMayBreak() {
    String words = "3 men, 2 Lawns, 5 grasses and 2 hours on 28 May";
    assertThat(Unbroken.of(words)).isEqualTo(words);
  }
}
