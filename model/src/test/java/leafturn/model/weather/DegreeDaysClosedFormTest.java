package leafturn.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DegreeDaysClosedFormTest {
  @Test
  void sineAgreesWithTheAreaUnderTheWave() {
    int steps = 200_000;
    for (double lowerC : new double[] {-3, 0, 4, 11.5}) {
      double area = 0;
      for (int step = 0; step < steps; step++) {
        double angle = 2 * Math.PI * (step + 0.5) / steps;
        area += Math.max(0, 5 + 7 * Math.sin(angle) - lowerC) / steps;
      }
      assertThat(DegreeDays.sineCd(-2, 12, lowerC)).isCloseTo(area, within(1e-7));
    }
  }

  @Test
  void allMethodsAgreeWhereTheThresholdLiesOutsideTheDay() {
    for (double lowerC : new double[] {-10, 2, 14, 20}) {
      double average = DegreeDays.averageCd(2, 14, lowerC);
      assertThat(DegreeDays.sineCd(2, 14, lowerC)).isEqualTo(average);
      assertThat(DegreeDays.triangleCd(2, 14, lowerC)).isEqualTo(average);
    }
    assertThat(DegreeDays.sineCd(9, 9, 9)).isZero();
  }

  @Test
  void refusesThresholdsOrExtremesTheWrongWayRound() {
    assertThatThrownBy(() -> DegreeDays.sineCd(5, 20, 10, 9))
        .hasMessageContaining("below the lower");
    assertThatThrownBy(() -> DegreeDays.triangleCd(20, 5, 10))
        .hasMessageContaining("above the maximum");
  }
}
