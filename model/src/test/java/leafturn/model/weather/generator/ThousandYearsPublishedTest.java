package leafturn.model.weather.generator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.stream.IntStream;
import leafturn.model.RandomStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A thousand generated years against what the generator was fitted to. The tolerances are those of
 * the design: wet fraction 0.01, mean wet day 3 %, monthly mean temperatures 0.3 °C, standard
 * deviations 5 %, correlations 0.03. Rain, and all correlations, are held against the record
 * itself; the monthly temperatures against the fitted season, because waves through four years do
 * not pass through every one of their months.
 */
class ThousandYearsPublishedTest {
  private static final WeatherSeries RECORD = NewYork.record();
  private static final WeatherGenerator GENERATOR = WeatherGenerator.fitted(RECORD);
  private static final LocalDate FIRST = LocalDate.of(1001, 1, 1);
  private static final WeatherSeries YEARS =
      GENERATOR.generate(new RandomStream(2026, 0), WeatherEve.unknown(), FIRST, 365_242);

  @Test
  void itRainsAsOftenAndAsMuchAsOnRecord() {
    double[] generated = wetDaysMm(YEARS);
    double[] recorded = wetDaysMm(RECORD);
    assertThat((double) generated.length / YEARS.days())
        .isCloseTo((double) recorded.length / RECORD.days(), within(0.01));
    assertThat(mean(generated)).isCloseTo(mean(recorded), Percentage.withPercentage(3));
  }

  @Test
  void eachMonthIsAsWetAsItsChainOfDays() {
    for (int month = 1; month <= 12; month++) {
      int[] days = daysOf(YEARS, month);
      double share = (double) IntStream.of(days).filter(d -> wet(YEARS, d)).count() / days.length;
      assertThat(share)
          .as("month %d", month)
          .isCloseTo(GENERATOR.occurrence(month).wetFraction(), within(0.01));
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"MAXIMUM_C", "MINIMUM_C"})
  void monthlyTemperaturesFollowTheFittedSeason(Quantity quantity) {
    QuantityCourse course =
        GENERATOR.courses().stream()
            .filter(c -> c.quantity() == quantity)
            .findFirst()
            .orElseThrow();
    for (int month = 1; month <= 12; month++) {
      double[] values =
          IntStream.of(daysOf(YEARS, month))
              .mapToDouble(day -> YEARS.value(quantity, day))
              .toArray();
      double[] expected = expected(course, month);
      assertThat(mean(values)).as("mean of month %d", month).isCloseTo(expected[0], within(0.3));
      assertThat(standardDeviation(values))
          .as("standard deviation of month %d", month)
          .isCloseTo(expected[1], Percentage.withPercentage(5));
    }
  }

  /** Mean and standard deviation of a month's days by the fitted courses of wet and dry days. */
  private static double[] expected(QuantityCourse course, int month) {
    double wet = GENERATOR.occurrence(month).wetFraction();
    double sum = 0;
    double squares = 0;
    int first = YearDay.firstOf(month - 1);
    int days = YearDay.lengthOf(month - 1);
    for (int day = first; day < first + days; day++) {
      for (int kind = 0; kind < 2; kind++) {
        double share = (kind == 1 ? wet : 1 - wet) / days;
        double mean = course.mean(day, kind == 1);
        double deviation = course.deviation(day, kind == 1);
        sum += share * mean;
        squares += share * (mean * mean + deviation * deviation);
      }
    }
    return new double[] {sum, Math.sqrt(squares - sum * sum)};
  }

  @Test
  void daysFollowOneAnotherAndMaximumGoesWithMinimumAsOnRecord() {
    Correlations recorded = new GeneratorFit(RECORD, day -> true).correlations(GENERATOR.courses());
    Correlations generated = new GeneratorFit(YEARS, day -> true).correlations(GENERATOR.courses());
    for (int row = 0; row < GENERATOR.courses().size(); row++) {
      for (int column = 0; column < GENERATOR.courses().size(); column++) {
        assertThat(generated.sameDay()[row][column])
            .as("same day, %d and %d", row, column)
            .isCloseTo(recorded.sameDay()[row][column], within(0.03));
        assertThat(generated.dayBefore()[row][column])
            .as("day before, %d and %d", row, column)
            .isCloseTo(recorded.dayBefore()[row][column], within(0.03));
      }
    }
  }

  private static boolean wet(WeatherSeries series, int day) {
    return RainClimate.wet(series.value(Quantity.RAIN_MM, day));
  }

  private static int[] daysOf(WeatherSeries series, int month) {
    return IntStream.range(0, series.days())
        .filter(day -> series.dayAt(day).getMonthValue() == month)
        .toArray();
  }

  private static double[] wetDaysMm(WeatherSeries series) {
    return IntStream.range(0, series.days())
        .filter(day -> wet(series, day))
        .mapToDouble(day -> series.value(Quantity.RAIN_MM, day))
        .toArray();
  }

  private static double mean(double[] values) {
    return IntStream.range(0, values.length).mapToDouble(i -> values[i]).average().orElseThrow();
  }

  private static double standardDeviation(double[] values) {
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / values.length);
  }
}
