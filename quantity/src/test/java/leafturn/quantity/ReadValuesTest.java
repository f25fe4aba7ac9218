package leafturn.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kept values to look at, in as many digits as anybody reads off a tape. */
class ReadValuesTest {
  @ParameterizedTest
  @CsvSource({
    "HEIGHT, 25, METRIC, 25 mm",
    "HEIGHT, 25, US, 0.98 in",
    "HEIGHT, 76.2, US, 3 in",
    "WATER, 0.5, US, 0.02 in",
    "WATER, 0, US, 0 in",
    "TEMPERATURE, -3.7, US, 25.34 °F"
  })
  void aValueIsToldInFewDigitsWhereItWasConverted(
      Measure measure, double kept, Units units, String told) {
    assertThat(measure.read(kept, units)).isEqualTo(told);
  }
}
