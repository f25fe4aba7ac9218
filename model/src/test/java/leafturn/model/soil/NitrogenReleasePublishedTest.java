package leafturn.model.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leafturn.model.soil.NitrogenRelease.Microbes;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NitrogenReleasePublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(NitrogenReleasePublishedTest.class, "nitrogen-release.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "criticalCarbonPerNitrogen" ->
              NitrogenRelease.criticalCarbonPerNitrogen(microbes(check));
          case "netFraction" ->
              NitrogenRelease.netFraction(check.in("litterCarbonPerNitrogen"), microbes(check));
          case "netNitrogen" ->
              NitrogenRelease.netNitrogen(
                  check.in("decomposedCarbon"),
                  check.in("litterCarbonPerNitrogen"),
                  microbes(check));
          case "recyclingMultiple" ->
              NitrogenRelease.recyclingMultiple(check.in("recycledFraction"));
          default -> throw check.unknownFunction();
        });
  }

  @Test
  void atTheCriticalRatioNothingIsFreedOrTiedUp() {
    Microbes microbes = new Microbes(0.43, 8.7);
    double critical = NitrogenRelease.criticalCarbonPerNitrogen(microbes);
    assertThat(NitrogenRelease.netNitrogen(50, critical, microbes)).isCloseTo(0, within(1e-14));
    assertThat(NitrogenRelease.netFraction(critical, microbes)).isCloseTo(0, within(1e-14));
  }

  private static Microbes microbes(PublishedCheck check) {
    return new Microbes(check.in("efficiencyFraction"), check.in("microbialCarbonPerNitrogen"));
  }
}
