package leafturn.model.soil;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DecayModifiersPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(DecayModifiersPublishedTest.class, "decay-modifiers.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "rothCTemperatureRaw" ->
              2.831 * DecayModifiers.rothCTemperatureFraction(check.in("temperatureC"));
          case "rothCTemperatureFraction" ->
              DecayModifiers.rothCTemperatureFraction(check.in("temperatureC"));
          case "neitschTemperatureFraction" ->
              DecayModifiers.neitschTemperatureFraction(check.in("temperatureC"));
          case "doublingTemperatureFraction" ->
              DecayModifiers.doublingTemperatureFraction(check.in("temperatureC"));
          case "neitschWaterFraction" ->
              DecayModifiers.neitschWaterFraction(check.in("fieldCapacityFraction"));
          case "adairWaterFraction" ->
              DecayModifiers.adairWaterFraction(check.in("rainPerPotentialEvapotranspiration"));
          case "moyanoWaterFraction" ->
              DecayModifiers.moyanoWaterFraction(check.in("waterM3PerM3"));
          case "carbonNitrogenLimitFraction" ->
              DecayModifiers.carbonNitrogenLimitFraction(check.in("carbonPerNitrogen"));
          default -> throw check.unknownFunction();
        });
  }

  @Test
  void combinedFactorLiesBetweenItsParts() {
    assertThat(DecayModifiers.neitschCombinedFraction(0.25, 1)).isEqualTo(0.5);
    assertThat(DecayModifiers.neitschCombinedFraction(0, 1)).isZero();
  }

  @Test
  void warmthNeverSlowsDecay() {
    for (double t = -30; t < 45; t += 0.5) {
      assertThat(DecayModifiers.rothCTemperatureFraction(t + 0.5))
          .isGreaterThanOrEqualTo(DecayModifiers.rothCTemperatureFraction(t));
    }
  }
}
