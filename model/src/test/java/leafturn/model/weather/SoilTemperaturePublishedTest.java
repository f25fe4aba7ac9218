package leafturn.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SoilTemperaturePublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(SoilTemperaturePublishedTest.class, "soil-temperature.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "dampingDepthM" -> damping(check);
          case "swingFraction" -> SoilTemperature.swingFraction(check.in("depthM"), damping(check));
          case "lagHours" -> lagS(check) / 3600;
          case "lagDays" -> lagS(check) / 86400;
          case "greatestDampingDepthMm" ->
              SoilTemperature.greatestDampingDepthMm(check.in("bulkDensityGPerCm3"));
          case "dampingDepthMm" -> wettedDamping(check);
          case "atDepthC" ->
              SoilTemperature.atDepthC(
                  check.in("yesterdayC"),
                  check.in("annualMeanC"),
                  check.in("surfaceC"),
                  SoilTemperature.depthFraction(check.in("depthMm"), wettedDamping(check)));
          default -> throw check.unknownFunction();
        });
  }

  @Test
  void waveFallsToOneOverEAndRunsOneRadianLateAtTheDampingDepth() {
    assertThat(SoilTemperature.waveC(12, 10, 0, 0.1, Math.PI / 2)).isCloseTo(22, within(1e-12));
    assertThat(SoilTemperature.waveC(12, 10, 0.1, 0.1, Math.PI / 2 + 1))
        .isCloseTo(12 + 10 / Math.E, within(1e-12));
  }

  @Test
  void runningMeanIsTheDepthFormWithoutThePullOfTheYear() {
    assertThat(SoilTemperature.runningMeanC(13, 13.5)).isCloseTo(13.1, within(1e-12));
    assertThat(SoilTemperature.runningMeanC(12, 20))
        .isCloseTo(SoilTemperature.atDepthC(12, 10, 20, 0), within(1e-12));
  }

  private static double damping(PublishedCheck check) {
    return SoilTemperature.dampingDepthM(check.in("diffusivityM2PerS"), check.in("periodS"));
  }

  private static double lagS(PublishedCheck check) {
    return SoilTemperature.lagS(check.in("depthM"), damping(check), check.in("periodS"));
  }

  private static double wettedDamping(PublishedCheck check) {
    return SoilTemperature.dampingDepthMm(
        check.in("soilWaterMm"), check.in("profileMm"), check.in("bulkDensityGPerCm3"));
  }
}
