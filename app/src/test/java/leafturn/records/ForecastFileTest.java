package leafturn.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import leafturn.model.weather.generator.WeatherForecast;
import org.junit.jupiter.api.Test;

class ForecastFileTest {
  private static final String HEADER = "date,temp_max,temp_min,rain_mm,rain_chance_percent,wind\n";

  @Test
  void theExampleIsRead() {
    WeatherForecast forecast = ForecastFile.read(Path.of("..", "docs", "examples", "forecast.csv"));
    assertThat(forecast.first()).isEqualTo(LocalDate.of(2015, 5, 29));
    assertThat(forecast.days()).hasSize(7);
    assertThat(forecast.days().get(2)).isEqualTo(new WeatherForecast.Day(18, 28, 14, 0.75, 5));
    assertThat(forecast.days().get(6).windMPerS()).isNaN();
  }

  @Test
  void allFaultsAreToldAtOnceEachInASentence() {
    assertThat(
            faults(
                HEADER
                    + "2015-05-29,75,19,0,5,3\n"
                    + "2015-05-31,28,18,14,750,5\n"
                    + "2015-05-30,18,28,,40,5\n"
                    + "2015-05-31,20,,,40,5\n"
                    + "2015-06-01,20,10,,,5\n"))
        .satisfiesExactly(
            fault -> assertThat(fault).contains("line 2", "75 is out of range", "-90"),
            fault -> assertThat(fault).contains("line 3", "2015-05-30 is missing"),
            fault -> assertThat(fault).contains("line 3", "750 is out of range", "chance of rain"),
            fault -> assertThat(fault).contains("line 4", "2015-05-30 comes after 2015-05-31"),
            fault -> assertThat(fault).contains("line 4", "18 °C lies below the minimum of 28 °C"),
            fault -> assertThat(fault).contains("line 5", "it is empty"),
            fault ->
                assertThat(fault).contains("line 6", "neither rain_mm nor rain_chance_percent"));
  }

  @Test
  void whatAForecastLacksIsTold() {
    assertThat(faults("date,temp_max\n2015-05-29,20\n"))
        .anyMatch(fault -> fault.contains("no column temp_min or tmin_c"))
        .anyMatch(fault -> fault.contains("neither a column rain_mm nor rain_chance_percent"));
    assertThat(faults(HEADER)).singleElement().asString().contains("a header but no days");
    StringBuilder long20 = new StringBuilder(HEADER);
    for (int day = 10; day < 30; day++) {
      long20.append("2015-05-").append(day).append(",20,10,0,10,3\n");
    }
    assertThat(faults(long20.toString())).singleElement().asString().contains("20 days", "16");
  }

  private static List<String> faults(String text) {
    return catchThrowableOfType(
            InputException.class, () -> ForecastFile.read(new SourceText("forecast.csv", text)))
        .faults();
  }
}
