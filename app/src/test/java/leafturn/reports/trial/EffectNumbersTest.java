package leafturn.reports.trial;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Numbers of effects to the decimals that their error bears. */
class EffectNumbersTest {
  @Test
  void anIntervalThatHoldsNoEffectNeverSeemsToEndThere() {
    EffectNumbers differences = new EffectNumbers(false);
    assertThat(differences.interval(-0.0034, 0.934, 0.19)).isEqualTo("−0.003 to 0.93");
    assertThat(differences.interval(0.13, 0.69, 0.14)).isEqualTo("0.13 to 0.69");
    assertThat(differences.interval(0, 0.69, 0.14)).isEqualTo("0.00 to 0.69");
    EffectNumbers ratios = new EffectNumbers(true);
    assertThat(ratios.interval(Math.log(0.9982), Math.log(1.21), 0.05)).isEqualTo("0.998 to 1.210");
  }
}
