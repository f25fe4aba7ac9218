package leafturn.advice.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import leafturn.model.lawn.Lawn;
import leafturn.model.lawn.LogEntry;
import leafturn.model.lawn.SiteClimate;
import leafturn.model.weather.WeatherSeries;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.model.weather.hourly.GrassDay.Span;
import leafturn.quantity.Units;
import org.junit.jupiter.api.Test;

/** Hours of a lawn under the weather of New York; common practice, no source. */
class MowingHoursTest {
  private static final LocalDate ON = LocalDate.of(2014, 5, 20);
  private static final double ABOUT = 0.5;

  /** Five shares rounded to a thousandth each. */
  private static final double ROUNDED = 0.0025;

  @Test
  void aFineDayHasDewFirstAndDryHoursThen() {
    MowingHours hours = on(fine(ON), Circumstances.NONE, List.of());
    Span dry = hours.longest(0, ABOUT).orElseThrow();
    assertThat(dry.from()).isBetween(7, 11);
    assertThat(hours.fitFor(0, 5, ABOUT)).isTrue();
    HourWords words = words(hours, Units.METRIC);
    assertThat(words.unfit(0)).isEqualTo("wet with dew until about " + dry.from());
    assertThat(words.dry(0)).isEqualTo("dry from about " + dry.from() + " to " + dry.to());
    assertThat(words.frost(0)).isEmpty();
  }

  @Test
  void readersOfUsUnitsReadTheirOwnClock() {
    HourWords words = words(on(fine(ON), Circumstances.NONE, List.of()), Units.US);
    assertThat(words.dry(0)).matches("dry from about \\d+ am to \\d+ pm");
    Reader us = new Reader(Units.US);
    assertThat(List.of(us.clock(0), us.clock(9), us.clock(12), us.clock(13), us.clock(24)))
        .containsExactly("12 am", "9 am", "noon", "1 pm", "12 am");
  }

  @Test
  void leavesSeenDryAtNoonAreDryThen() {
    WeatherSeries showers = CallExamples.changed(fine(ON), Quantity.RAIN_MM, ON, ON, 4);
    MowingHours reckoned = on(showers, Circumstances.NONE, List.of());
    MowingHours looked = on(showers, seen(Sight.DRY_LEAVES, 12, true), List.of());
    assertThat(reckoned.day(0).dryFraction(12)).isLessThan(1);
    assertThat(looked.day(0).dryFraction(12)).isEqualTo(1);
  }

  @Test
  void leavesSeenNotWetAreDry() {
    WeatherSeries showers = CallExamples.changed(fine(ON), Quantity.RAIN_MM, ON, ON, 4);
    MowingHours looked = on(showers, seen(Sight.WET_LEAVES, 12, false), List.of());
    assertThat(looked.day(0).dryFraction(12)).isEqualTo(1);
  }

  @Test
  void rainThisMorningLeavesTheAfternoon() {
    Circumstances rain = Circumstances.NONE.withSightings(List.of(Sighting.of(Sight.RAIN, ON)));
    MowingHours hours = on(fine(ON), rain, List.of());
    Span dry = hours.longest(0, 0.75).orElseThrow();
    assertThat(dry.from()).isBetween(12, 15);
    assertThat(hours.fit(0, ABOUT)).hasSize(1);
    assertThat(hours.fitFor(0, 2, 0.75)).isTrue();
    assertThat(words(hours, Units.METRIC).unfit(0)).startsWith("wet with rain until about 1");
  }

  @Test
  void rainThatHasNotFallenYetMayStillFall() {
    WeatherSeries showers = CallExamples.changed(fine(ON), Quantity.RAIN_MM, ON, ON, 4);
    MowingHours looked = on(showers, seen(Sight.RAIN, 11, false), List.of());
    assertThat(looked.day(0).dryFraction(10)).isEqualTo(1);
    assertThat(looked.day(0).dryFraction(18)).isLessThan(0.7);
  }

  @Test
  void frostSeenAtEightIsGoneLater() {
    MowingHours hours = on(fine(ON), seen(Sight.GROUND_FROST, 8, true), List.of());
    assertThat(hours.day(0).frostGoneAt()).isBetween(9, 11);
    assertThat(words(hours, Units.METRIC).frost(0)).startsWith("ground frost until about ");
    assertThat(hours.longest(0, ABOUT).orElseThrow().from())
        .isGreaterThanOrEqualTo(hours.day(0).frostGoneAt());
  }

  @Test
  void wateringOfTheDayWetsItsMorning() {
    MowingHours hours = on(fine(ON), Circumstances.NONE, List.of(new LogEntry.Watered(ON, 8)));
    assertThat(words(hours, Units.METRIC).unfit(0)).startsWith("wet with sprinkler water until");
  }

  @Test
  void aDayOfLongRainHasNoHours() {
    WeatherSeries rain = CallExamples.changed(fine(ON), Quantity.RAIN_MM, ON, ON, 40);
    WeatherSeries dull = CallExamples.changed(rain, Quantity.MAXIMUM_C, ON, ON, 13);
    HourWords words = words(on(dull, Circumstances.NONE, List.of()), Units.METRIC);
    assertThat(words.dry(0)).isEqualTo("no dry hours likely");
    assertThat(words.unfit(0)).isEqualTo("no dry hours likely");
    assertThat(words.of(0)).isEqualTo("no dry hours likely");
  }

  @Test
  void aCallShowsBothDaysWithTheirLimits() {
    MowingHours hours = on(fine(ON), Circumstances.NONE, List.of());
    DryHours shown = DryHours.of(hours, new Reader(Units.METRIC), CallRules.standard());
    assertThat(shown.days()).hasSize(2);
    assertThat(shown.days().get(0).words()).matches("wet with dew until about \\d+, then dry");
    assertThat(shown.limits())
        .contains("0.05 mm", "90 %", "75 % of the possible weathers", "2.5 h off", "not measured");
    for (DryHours.Hour hour : shown.days().get(1).hours()) {
      assertThat(hour.fit() + hour.dew() + hour.rain() + hour.watering()).isLessThan(1 + ROUNDED);
      assertThat(hour.fit() + hour.dew() + hour.rain() + hour.watering() + hour.frost())
          .isGreaterThan(1 - ROUNDED);
    }
  }

  @Test
  void theDayAfterTheRecordEndsHasHoursFromPossibleSeasonsAlone() {
    WeatherSeries weather = CallExamples.newYork();
    LocalDate next = weather.lastDay().plusDays(1);
    MowingHours hours = on(weather, next, Circumstances.NONE, List.of());
    assertThat(hours.day(0).date()).isEqualTo(next);
    assertThat(hours.day(1).date()).isEqualTo(next.plusDays(1));
    assertThat(MowingHours.has(1)).isTrue();
    assertThat(MowingHours.has(2)).isFalse();
  }

  /** New York with a fine day and eve on a date. */
  private static WeatherSeries fine(LocalDate on) {
    LocalDate eve = on.minusDays(1);
    WeatherSeries dry = CallExamples.changed(CallExamples.newYork(), Quantity.RAIN_MM, eve, on, 0);
    WeatherSeries cool = CallExamples.changed(dry, Quantity.MINIMUM_C, eve, on, 10);
    return CallExamples.changed(cool, Quantity.MAXIMUM_C, eve, on, 23);
  }

  private static Circumstances seen(Sight sight, int hour, boolean there) {
    return Circumstances.NONE.withSightings(
        List.of(new Sighting(ON, LocalTime.of(hour, 0), sight, there)));
  }

  private static HourWords words(MowingHours hours, Units units) {
    return new HourWords(hours, new Reader(units), new HourWords.Told(ABOUT, 2));
  }

  private static MowingHours on(
      WeatherSeries weather, Circumstances circumstances, List<LogEntry> log) {
    return on(weather, ON, circumstances, log);
  }

  private static MowingHours on(
      WeatherSeries weather, LocalDate on, Circumstances circumstances, List<LogEntry> log) {
    Lawn lawn = CallExamples.fescue();
    SiteClimate climate = new SiteClimate(weather, lawn.site());
    LawnToday today = Replay.to(lawn, climate, log, on);
    WeatherToCome toCome =
        WeatherToCome.after(
            new WeatherToCome.Start(climate, on, today.firstDayToCome(), today.state().soilC()),
            SeasonsAsked.USUAL);
    return MowingHours.of(
        today,
        climate,
        toCome.seasons().stream().map(w -> new PossibleSeason(w, today.equations())).toList(),
        new Asked(on, CallRules.standard(), Units.METRIC, circumstances));
  }
}
