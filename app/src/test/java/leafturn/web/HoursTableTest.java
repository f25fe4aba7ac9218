package leafturn.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import leafturn.advice.call.DryHours;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.WeatherFile;
import org.junit.jupiter.api.Test;

class HoursTableTest {
  private static final WeatherSeries WEATHER =
      WeatherFile.read(Examples.file("new-york-2012-2015.csv"), WeatherFile.Choice.ONLY_SITE)
          .series();

  @Test
  void everyHourStandsInTheTableInTheReadersUnits() {
    HoursTable metric = table(Units.METRIC);
    assertThat(metric.days()).hasSize(1);
    assertThat(metric.today()).startsWith("Today wet with dew until about ");
    HoursTable.DayLine day = metric.days().get(0);
    assertThat(day.name()).startsWith("Today, ");
    assertThat(day.hours()).hasSize(24);
    assertThat(day.hours().get(3).fit()).isEqualTo("0");
    assertThat(day.hours().get(3).dew()).isEqualTo("100");
    assertThat(day.hours().get(14).from()).isEqualTo("14");
    assertThat(day.hours().get(14).fit()).isEqualTo("100");
    HoursTable us = table(Units.US);
    assertThat(us.days().get(0).hours().get(14).from()).isEqualTo("2 pm");
    assertThat(Double.parseDouble(us.days().get(0).hours().get(14).air()))
        .isGreaterThan(Double.parseDouble(day.hours().get(14).air()));
    assertThat(us.temperatureUnit()).isEqualTo("°F");
    assertThat(metric.limits()).contains("solar time");
    assertThat(metric.least()).isEqualTo("50 %");
  }

  private static HoursTable table(Units units) {
    int day = WEATHER.indexOf(LocalDate.of(2014, 5, 20));
    return new HoursTable(DryHours.recorded(WEATHER, Site.at(40.78, 40), day, units), units);
  }
}
