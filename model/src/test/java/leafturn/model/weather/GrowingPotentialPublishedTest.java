package leafturn.model.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import leafturn.model.Bisection;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GrowingPotentialPublishedTest {
  private static final double ABOVE_NOTHING = 1e-9;

  static List<PublishedCheck> checks() {
    return PublishedCheck.of(GrowingPotentialPublishedTest.class, "growing-potential.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "gaussianFraction" -> gaussian(check, check.in("airTemperatureC"));
          case "gaussianHeldAboveOptimumFraction" ->
              GrowingPotential.gaussianHeldAboveOptimumFraction(
                  check.in("airTemperatureC"), check.in("optimumC"), check.in("spreadC"));
          case "gaussianReachedAtC" -> crossing(check, t -> gaussian(check, t) - check.in("level"));
          case "coolAndWarmSeasonCrossAtC" ->
              crossing(
                  check,
                  t ->
                      GrowingPotential.gaussianFraction(t, 20, 5.5)
                          - GrowingPotential.gaussianFraction(t, 31, 7));
          case "tallFescueCubicFraction" ->
              GrowingPotential.tallFescueCubicFraction(check.in("airTemperatureC"));
          case "tallFescueCubicStartsAtC", "tallFescueCubicEndsAtC" ->
              crossing(check, t -> GrowingPotential.tallFescueCubicFraction(t) - ABOVE_NOTHING);
          case "betaFraction" ->
              GrowingPotential.betaFraction(
                  check.in("airTemperatureC"),
                  check.in("baseC"),
                  check.in("optimumC"),
                  check.in("maximumC"));
          default -> throw check.unknownFunction();
        });
  }

  @Test
  void nothingGrowsOutsideTheCardinalTemperatures() {
    for (double t : new double[] {-60, -20, 0, 2.9, 35.1, 50}) {
      assertThat(GrowingPotential.tallFescueCubicFraction(t)).isZero();
      assertThat(GrowingPotential.betaFraction(t, 3, 21.25, 35)).isZero();
    }
    assertThat(GrowingPotential.betaFraction(21.25, 3, 21.25, 35)).isEqualTo(1);
  }

  private static double gaussian(PublishedCheck check, double airTemperatureC) {
    return GrowingPotential.gaussianFraction(
        airTemperatureC, check.in("optimumC"), check.in("spreadC"));
  }

  private static double crossing(PublishedCheck check, DoubleUnaryOperator difference) {
    return Bisection.zero(difference, check.in("searchFromC"), check.in("searchToC"));
  }
}
