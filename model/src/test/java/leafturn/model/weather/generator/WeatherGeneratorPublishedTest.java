package leafturn.model.weather.generator;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WeatherGeneratorPublishedTest {
  private static final WeatherSeries RECORD = NewYork.record();
  private static final WeatherGenerator GENERATOR = WeatherGenerator.fitted(RECORD);

  static List<PublishedCheck> checks() {
    return PublishedCheck.of(WeatherGeneratorPublishedTest.class, "weather-generator.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "standardA" -> at(check, Residuals.standard(3).memory());
          case "standardB" -> at(check, Residuals.standard(3).innovation());
          case "stationary" -> at(check, Residuals.standard(3).stationary());
          case "wetFraction" -> chain(check).wetFraction();
          case "persistence" -> chain(check).persistence();
          case "wetSpell" -> chain(check).meanWetSpellDays();
          case "drySpell" -> chain(check).meanDrySpellDays();
          case "varianceOf30Days" -> chain(check).varianceOfWetDays(30);
          case "fitWetFraction" -> (double) wetDaysMm(check).length / days(check).length;
          case "fitAfterDry" -> fitted(check).afterDryFraction();
          case "fitAfterWet" -> fitted(check).afterWetFraction();
          case "fitMean" -> GammaAmount.fitted(wetDaysMm(check)).meanMm();
          case "fitShape" -> GammaAmount.fitted(wetDaysMm(check)).shape();
          case "fitScale" -> GammaAmount.fitted(wetDaysMm(check)).scaleMm();
          default -> throw check.unknownFunction();
        });
  }

  private static double at(PublishedCheck check, double[][] matrix) {
    return matrix[check.wholeIn("row")][check.wholeIn("column")];
  }

  private static RainOccurrence chain(PublishedCheck check) {
    return new RainOccurrence(check.in("afterDry"), check.in("afterWet"));
  }

  private static RainOccurrence fitted(PublishedCheck check) {
    return check.has("month") ? GENERATOR.occurrence(check.wholeIn("month")) : wholeYear();
  }

  private static RainOccurrence wholeYear() {
    int[][] counts = new int[2][2];
    for (int day = 1; day < RECORD.days(); day++) {
      counts[wet(day - 1) ? 1 : 0][wet(day) ? 1 : 0]++;
    }
    return new RainOccurrence(
        (double) counts[0][1] / (counts[0][0] + counts[0][1]),
        (double) counts[1][1] / (counts[1][0] + counts[1][1]));
  }

  private static boolean wet(int day) {
    return RainClimate.wet(RECORD.value(Quantity.RAIN_MM, day));
  }

  private static int[] days(PublishedCheck check) {
    return IntStream.range(0, RECORD.days())
        .filter(day -> !check.has("month") || inMonth(day, check.wholeIn("month")))
        .toArray();
  }

  private static boolean inMonth(int day, int month) {
    LocalDate date = RECORD.dayAt(day);
    return date.getMonthValue() == month;
  }

  private static double[] wetDaysMm(PublishedCheck check) {
    return IntStream.of(days(check))
        .filter(WeatherGeneratorPublishedTest::wet)
        .mapToDouble(day -> RECORD.value(Quantity.RAIN_MM, day))
        .toArray();
  }
}
