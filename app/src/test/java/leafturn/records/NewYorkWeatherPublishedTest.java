package leafturn.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import leafturn.advice.season.WeatherAccount;
import leafturn.advice.season.WeatherAccount.Span;
import leafturn.advice.season.WeatherAccount.Year;
import leafturn.records.WeatherFile.Choice;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The weather of the examples: read whole, and summed as it was summed before. */
class NewYorkWeatherPublishedTest {
  private static final WeatherReading READING =
      WeatherFile.read(Examples.file("new-york-2012-2015.csv"), Choice.ONLY_SITE);
  private static final WeatherAccount ACCOUNT = WeatherAccount.of(READING.series(), null);

  @ParameterizedTest
  @CsvFileSource(resources = "/checks/new-york-weather.csv", numLinesToSkip = 1)
  void sumsAsBefore(
      String quantity,
      String when,
      double expected,
      double tolerance,
      String source,
      String status) {
    assertThat(actual(quantity, when))
        .as("%s %s by %s (%s)", quantity, when, source, status)
        .isCloseTo(expected, within(tolerance));
  }

  private static double actual(String quantity, String when) {
    return switch (quantity) {
      case "days" -> READING.series().days();
      case "rain" -> year(when).total().rainMm();
      case "wetFraction" ->
          ACCOUNT.months().stream().mapToDouble(Span::wetDays).sum() / READING.series().days();
      case "julyMaximum" -> july().stream().mapToDouble(Span::meanMaximumC).average().orElseThrow();
      case "julyMinimum" -> july().stream().mapToDouble(Span::meanMinimumC).average().orElseThrow();
      case "lastFrost" -> dayOfYear(year(when).lastFrostBeforeJuly());
      case "firstFrost" -> dayOfYear(year(when).firstFrostFromJuly());
      case "above0" -> year(when).total().warmth().above0Cd();
      case "above10" -> year(when).total().warmth().above10Cd();
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static int dayOfYear(@Nullable LocalDate day) {
    return Objects.requireNonNull(day).getDayOfYear();
  }

  private static Year year(String name) {
    return ACCOUNT.years().stream()
        .filter(year -> year.total().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static List<Span> july() {
    return ACCOUNT.months().stream().filter(month -> month.name().endsWith("-07")).toList();
  }

  @Test
  void isReadWithoutFillingAnything() {
    assertThat(READING.filled()).isEmpty();
    assertThat(READING.place()).isEqualTo("New York");
    assertThat(READING.notes()).containsExactly("Columns not used: \"weather\".");
  }
}
