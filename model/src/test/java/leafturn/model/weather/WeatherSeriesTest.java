package leafturn.model.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeatherSeriesTest {
  private static WeatherSeries twoDays(Map<Quantity, double[]> changed) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    values.put(Quantity.MINIMUM_C, new double[] {8, 10});
    values.put(Quantity.MAXIMUM_C, new double[] {19, 24});
    values.put(Quantity.RAIN_MM, new double[] {0, 3});
    values.putAll(changed);
    return new WeatherSeries(LocalDate.of(2012, 2, 28), values);
  }

  @Test
  void tellsDatesByIndexAcrossLeapDay() {
    WeatherSeries series = twoDays(Map.of());
    assertThat(series.dayAt(1)).isEqualTo(LocalDate.of(2012, 2, 29)).isEqualTo(series.lastDay());
    assertThat(series.indexOf(LocalDate.of(2012, 3, 1))).isEqualTo(2);
    assertThat(series.value(Quantity.DEW_POINT_C, 1)).isNaN();
  }

  @ParameterizedTest
  @CsvSource({
    "WIND_M_PER_S, -3, 'wind speed is -3 m/s, but must lie from 0 to 115 m/s'",
    "HUMIDITY_MAXIMUM_PERCENT, 101, 'relative humidity is 101 %'",
    "RADIATION_MJ_PER_M2, 350, 'global radiation is 350 MJ/m2'",
    "DEW_POINT_C, 283, 'air temperature is 283 °C'",
    "MAXIMUM_C, 75, 'air temperature is 75 °C'",
    "RAIN_MM, -1, 'rain is -1 mm'"
  })
  void namesTheDayOfAValueThatCannotBe(Quantity quantity, double value, String words) {
    assertThatThrownBy(() -> twoDays(Map.of(quantity, new double[] {12, value})))
        .hasMessageContaining("2012-02-29")
        .hasMessageContaining(words);
  }

  @Test
  void takesMissingValuesOfWhatNeedNotBeMeasured() {
    WeatherSeries series =
        twoDays(Map.of(Quantity.WIND_M_PER_S, new double[] {Double.NaN, Double.NaN}));
    assertThat(series.has(Quantity.WIND_M_PER_S)).isFalse();
    assertThatThrownBy(() -> twoDays(Map.of(Quantity.RAIN_MM, new double[] {0, Double.NaN})))
        .hasMessageContaining("2012-02-29");
  }

  @Test
  void doesNotChangeWithTheArrayItWasGiven() {
    double[] wind = {2, 3};
    WeatherSeries series = twoDays(Map.of(Quantity.WIND_M_PER_S, wind));
    wind[0] = 99;
    assertThat(series.value(Quantity.WIND_M_PER_S, 0)).isEqualTo(2);
  }
}
