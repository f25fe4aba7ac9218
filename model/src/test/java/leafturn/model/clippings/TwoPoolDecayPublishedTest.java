package leafturn.model.clippings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TwoPoolDecayPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(TwoPoolDecayPublishedTest.class, "two-pool-decay.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "singleRatePerDay" -> rate(check);
          case "halfLifeDays" -> TwoPoolDecay.halfLifeDays(rate(check));
          case "remainingFraction" ->
              TwoPoolDecay.remainingFraction(
                  new TwoPoolDecay.Litter(
                      check.in("fastFraction"),
                      check.in("fastRatePerDay"),
                      check.in("slowRatePerDay")),
                  check.in("referenceDays"));
          case "fastFraction" ->
              TwoPoolDecay.fastFraction(check.in("ligninFraction"), check.in("nitrogenFraction"));
          default -> throw check.unknownFunction();
        });
  }

  @Test
  void nothingIsLostAtTheStart() {
    assertThat(TwoPoolDecay.remainingFraction(new TwoPoolDecay.Litter(0.85, 0.045, 0.01), 0))
        .isEqualTo(1);
  }

  @Test
  void refusesALossOfEverythingAndATimeOfNothing() {
    assertThatThrownBy(() -> TwoPoolDecay.singleRatePerDay(1, 112))
        .hasMessageContaining("loss fraction is 1");
    assertThatThrownBy(() -> TwoPoolDecay.singleRatePerDay(0.5, 0))
        .hasMessageContaining("more than 0 days");
  }

  private static double rate(PublishedCheck check) {
    return TwoPoolDecay.singleRatePerDay(check.in("lostFraction"), check.in("days"));
  }
}
