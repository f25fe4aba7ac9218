package leafturn.model.weather.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.model.RandomStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Generated seasons along a forecast. */
class ForecastFollowingTest {
  private static final WeatherSeries RECORD = NewYork.record();
  private static final WeatherGenerator GENERATOR = WeatherGenerator.fitted(RECORD);
  private static final LocalDate FIRST = LocalDate.of(2016, 5, 20);
  private static final int SEASONS = 1000;
  private static final int DAYS = 45;
  private static final WeatherForecast HOT_AND_DRY =
      new WeatherForecast(
          FIRST, Collections.nCopies(7, new WeatherForecast.Day(19, 31, 0, Double.NaN, 3)));

  private static List<WeatherSeries> seasons(@Nullable WeatherForecast forecast) {
    WeatherEve eve = GENERATOR.eve(RECORD, RECORD.days() - 1);
    return IntStream.range(0, SEASONS)
        .mapToObj(i -> GENERATOR.generate(new RandomStream(1, i), eve, FIRST, DAYS, forecast))
        .toList();
  }

  private static double mean(List<WeatherSeries> seasons, Quantity quantity, int day) {
    return seasons.stream().mapToDouble(s -> s.value(quantity, day)).average().orElseThrow();
  }

  private static double deviation(List<WeatherSeries> seasons, Quantity quantity, int day) {
    double mean = mean(seasons, quantity, day);
    return Math.sqrt(
        seasons.stream()
            .mapToDouble(s -> s.value(quantity, day) - mean)
            .map(apart -> apart * apart)
            .average()
            .orElseThrow());
  }

  @Test
  void temperaturesFollowWithErrorsThatGrowAndReturnToTheSeason() {
    List<WeatherSeries> seasons = seasons(HOT_AND_DRY);
    assertThat(mean(seasons, Quantity.MAXIMUM_C, 0)).isCloseTo(31, within(0.3));
    assertThat(deviation(seasons, Quantity.MAXIMUM_C, 0)).isBetween(1.0, 2.2);
    assertThat(deviation(seasons, Quantity.MAXIMUM_C, 4))
        .isGreaterThan(1.4 * deviation(seasons, Quantity.MAXIMUM_C, 0));
    List<WeatherSeries> free = seasons(null);
    assertThat(mean(seasons, Quantity.MAXIMUM_C, 8))
        .isGreaterThan(mean(free, Quantity.MAXIMUM_C, 8) + 1);
    for (int day : new int[] {30, 44}) {
      assertThat(mean(seasons, Quantity.MAXIMUM_C, day))
          .isCloseTo(mean(free, Quantity.MAXIMUM_C, day), within(0.5));
      assertThat(deviation(seasons, Quantity.MAXIMUM_C, day))
          .isCloseTo(deviation(free, Quantity.MAXIMUM_C, day), within(0.3));
    }
  }

  @Test
  void rainFollowsTheChanceThatWasToldOrTheAmount() {
    WeatherForecast told =
        new WeatherForecast(
            FIRST,
            List.of(
                new WeatherForecast.Day(12, 20, 12, 0.7, Double.NaN),
                new WeatherForecast.Day(12, 20, 0, Double.NaN, Double.NaN),
                new WeatherForecast.Day(12, 20, 10, Double.NaN, Double.NaN)));
    List<WeatherSeries> seasons = seasons(told);
    assertThat(wetFraction(seasons, 0)).isCloseTo(0.7, within(0.05));
    assertThat(mean(seasons, Quantity.RAIN_MM, 0)).isCloseTo(0.7 * 12, within(0.9));
    assertThat(wetFraction(seasons, 1)).isCloseTo(0.14, within(0.04));
    assertThat(wetFraction(seasons, 2)).isCloseTo(0.82, within(0.04));
  }

  private static double wetFraction(List<WeatherSeries> seasons, int day) {
    return seasons.stream().filter(s -> s.value(Quantity.RAIN_MM, day) > 0).count()
        / (double) SEASONS;
  }

  @Test
  void aDayBeforeTheForecastBeginsIsTheSeasonsOwn() {
    WeatherForecast fromTheSecondDay =
        new WeatherForecast(FIRST.plusDays(1), HOT_AND_DRY.days().subList(1, 7));
    List<WeatherSeries> seasons = seasons(fromTheSecondDay);
    List<WeatherSeries> free = seasons(null);
    assertThat(mean(seasons, Quantity.MAXIMUM_C, 0))
        .isCloseTo(mean(free, Quantity.MAXIMUM_C, 0), within(1e-9));
    assertThat(wetFraction(seasons, 0)).isEqualTo(wetFraction(free, 0));
    assertThat(mean(seasons, Quantity.MAXIMUM_C, 1))
        .isCloseTo(mean(seasons(HOT_AND_DRY), Quantity.MAXIMUM_C, 1), within(0.3));
  }

  @Test
  void aForecastMustHoldTheFirstDayThatIsNotKnownOrTheDayAfterTheOneAskedAbout() {
    assertThat(HOT_AND_DRY.faultFrom(FIRST, FIRST.minusDays(1))).isEmpty();
    assertThat(HOT_AND_DRY.faultFrom(FIRST.minusDays(1), FIRST.minusDays(1))).isEmpty();
    assertThat(HOT_AND_DRY.faultFrom(FIRST.plusDays(6), FIRST.plusDays(6))).isEmpty();
    assertThat(HOT_AND_DRY.faultFrom(FIRST.minusDays(1), FIRST.minusDays(2)))
        .hasValueSatisfying(fault -> assertThat(fault).contains("begins on 2016-05-20"));
    assertThat(HOT_AND_DRY.faultFrom(FIRST.plusDays(7), FIRST.plusDays(7)))
        .hasValueSatisfying(fault -> assertThat(fault).contains("ends on 2016-05-26"));
    assertThatThrownBy(() -> new WeatherForecast.Day(12, 8, 0, 0, Double.NaN))
        .hasMessageContaining("below the minimum");
    assertThatThrownBy(() -> new WeatherForecast.Day(8, 12, 10, 0, Double.NaN))
        .hasMessageContaining("10.0 mm of rain are told, but no chance of any");
  }
}
