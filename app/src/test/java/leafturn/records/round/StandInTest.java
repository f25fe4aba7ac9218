package leafturn.records.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.stream.IntStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which day of a record stands in for a day after its end; each day's rain tells which it is. */
class StandInTest {
  private static final LocalDate FIRST = LocalDate.of(2019, 7, 1);
  private static final LocalDate LAST = LocalDate.of(2023, 5, 3);

  @ParameterizedTest(name = "{1} stands in for {0}")
  @CsvSource({
    "2023-05-04, 2020-05-04",
    "2023-12-31, 2020-12-31",
    "2024-01-01, 2021-01-01",
    "2024-02-29, 2021-02-28",
    "2025-07-14, 2022-07-14",
    "2026-02-28, 2020-02-28",
    "2028-02-29, 2022-02-28"
  })
  void theWholeYearsOnRecordTakeTurns(LocalDate day, LocalDate standIn) {
    WeatherSeries record = record(FIRST, LAST);
    WeatherSeries extended = StandIn.upTo(record, LocalDate.of(2028, 3, 1));
    assertThat(rain(extended, day)).isEqualTo(rain(record, standIn));
  }

  @Test
  void whatWasMeasuredStaysAsItIs() {
    WeatherSeries record = record(FIRST, LAST);
    WeatherSeries extended = StandIn.upTo(record, LAST.plusDays(90));
    assertThat(extended.lastDay()).isEqualTo(LAST.plusDays(90));
    for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
      assertThat(rain(extended, day)).isEqualTo(rain(record, day));
    }
  }

  @Test
  void aRecordThatReachesTheDayIsTakenAsItIs() {
    WeatherSeries record = record(FIRST, LAST);
    assertThat(StandIn.upTo(record, LAST)).isSameAs(record);
    assertThat(StandIn.upTo(record, LAST.minusDays(5))).isSameAs(record);
  }

  @Test
  void withoutAWholeCalendarYearTheYearsThatHoldTheDateStandIn() {
    LocalDate first = LocalDate.of(2022, 3, 1);
    LocalDate last = LocalDate.of(2023, 5, 31);
    WeatherSeries record = record(first, last);
    WeatherSeries extended = StandIn.upTo(record, LocalDate.of(2024, 4, 2));
    assertThat(rain(extended, LocalDate.of(2023, 6, 1))).isEqualTo(rain(record, day(2022, 6, 1)));
    assertThat(rain(extended, LocalDate.of(2024, 1, 9))).isEqualTo(rain(record, day(2023, 1, 9)));
    assertThat(rain(extended, LocalDate.of(2024, 4, 2))).isEqualTo(rain(record, day(2023, 4, 2)));
  }

  @Test
  void aShortRecordIsExtendedAsFarAsItsDatesReach() {
    WeatherSeries record = record(day(2023, 3, 1), day(2023, 5, 31));
    assertThat(StandIn.upTo(record, day(2023, 6, 30)).lastDay()).isEqualTo(day(2023, 5, 31));
  }

  private static LocalDate day(int year, int month, int day) {
    return LocalDate.of(year, month, day);
  }

  private static WeatherSeries record(LocalDate first, LocalDate last) {
    int days = (int) (last.toEpochDay() - first.toEpochDay()) + 1;
    double[] minimum = new double[days];
    double[] maximum = IntStream.range(0, days).mapToDouble(day -> 12).toArray();
    double[] number = IntStream.range(0, days).mapToDouble(day -> day / 10.0).toArray();
    return new WeatherSeries(
        first,
        Map.of(Quantity.MINIMUM_C, minimum, Quantity.MAXIMUM_C, maximum, Quantity.RAIN_MM, number));
  }

  private static double rain(WeatherSeries series, LocalDate day) {
    return series.value(Quantity.RAIN_MM, series.indexOf(day));
  }
}
