package leafturn.reports.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import leafturn.advice.call.DryHours;
import leafturn.model.weather.Site;
import leafturn.model.weather.WeatherSeries;
import leafturn.quantity.Units;
import leafturn.records.Examples;
import leafturn.records.WeatherFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class HoursFigureTest {
  private static final Pattern TEXT =
      Pattern.compile(
          "<text class=\"(\\w+)\" x=\"([-\\d.]+)\" y=\"([-\\d.]+)\" text-anchor=\"(\\w+)\" font-size=\"([\\d.]+)\">([^<]*)</text>");
  private static final Site SITE = new Site(40.78, 40, 10, -73.97, ZoneId.of("America/New_York"));
  private static final WeatherSeries WEATHER =
      WeatherFile.read(Examples.file("new-york-2012-2015.csv"), WeatherFile.Choice.ONLY_SITE)
          .series();

  @ParameterizedTest
  @EnumSource(HoursFormat.class)
  void noLabelCoversAnotherOrLeavesTheFigure(HoursFormat format) {
    for (int day = 3; day < 400; day += 9) {
      for (Units units : Units.values()) {
        String svg = draw(day, units, format);
        Box edge = new Box(0, 0, format.widthPx, 1000);
        List<Label> labels = labels(svg);
        assertThat(labels.size()).isGreaterThan(6);
        for (int i = 0; i < labels.size(); i++) {
          assertThat(labels.get(i).box().inside(edge)).as(labels.get(i).words()).isTrue();
          for (int j = i + 1; j < labels.size(); j++) {
            assertThat(labels.get(i).box().overlaps(labels.get(j).box()))
                .as("%s covers %s", labels.get(i).words(), labels.get(j).words())
                .isFalse();
          }
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(HoursFormat.class)
  void itSaysInWordsWhatItDraws(HoursFormat format) {
    int fine = WEATHER.indexOf(LocalDate.of(2014, 5, 20));
    String svg = draw(fine, Units.METRIC, format);
    assertThat(svg)
        .contains("aria-label=\"Hours in which the grass is fit for mowing. ", "May: wet with dew")
        .contains(">dry<", ">dew<", ">Today<", "hour-span")
        .doesNotContain("style", "NaN");
    assertThat(draw(fine, Units.US, format)).contains(">noon<", ">6 pm<");
  }

  private static String draw(int day, Units units, HoursFormat format) {
    return HoursFigure.draw(DryHours.recorded(WEATHER, SITE, day, units), units, format);
  }

  private static List<Label> labels(String svg) {
    List<Label> labels = new ArrayList<>();
    for (MatchResult text : TEXT.matcher(svg).results().toList()) {
      Label.Align align =
          switch (text.group(4)) {
            case "start" -> Label.Align.START;
            case "end" -> Label.Align.END;
            default -> Label.Align.MIDDLE;
          };
      Point at = new Point(Double.parseDouble(text.group(2)), Double.parseDouble(text.group(3)));
      labels.add(
          new Label(at, align, Double.parseDouble(text.group(5)), text.group(1), text.group(6)));
    }
    return labels;
  }
}
