package leafturn.model.weather.hourly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import leafturn.model.weather.Humidity;
import leafturn.model.weather.Site;
import leafturn.model.weather.hourly.GrassDay.Span;
import leafturn.model.weather.hourly.GrassDay.WetFrom;
import org.junit.jupiter.api.Test;

/** What common practice and the weather book say of the hours of a lawn. */
class GrassHoursTest {
  private static final Site NEW_YORK = new Site(40.8, 40, 10, -74.0, ZoneId.of("America/New_York"));
  private static final LocalDate MAY = LocalDate.of(2026, 5, 4);
  private static final double NAN = Double.NaN;
  private static final DayWeather.Water NONE = DayWeather.Water.rain(0);

  @Test
  void dewDriesInTheMorningAndComesBackAtNight() {
    GrassDay day = today(fine(NONE));
    Span dry = only(day.fit(0.5, 0));
    assertThat(dry.from()).isBetween(7, 11);
    assertThat(dry.to()).isBetween(17, 20);
    assertThat(day.mostlyWetFrom(5)).isEqualTo(WetFrom.DEW);
    assertThat(day.leafWaterMm(5)).as("dew of a night, mm").isBetween(0.05, 0.5);
    assertThat(day.dryFraction(3)).isZero();
  }

  @Test
  void aWindyNightInDryAirBringsNoDew() {
    DayWeather.Air air = new DayWeather.Air(12, 22, ea(2), 24, 5);
    GrassDay day = today(new DayWeather(air, NONE));
    assertThat(only(day.fit(0.9, 0))).isEqualTo(new Span(6, 20));
  }

  @Test
  void afterRainInTheMorningTheAfternoonDries() {
    GrassDay day = today(fine(new DayWeather.Water(6, RainTime.ended(11), 0)));
    Span dry = only(day.fit(0.5, 0));
    assertThat(dry.from()).isBetween(12, 15);
    assertThat(day.mostlyWetFrom(11)).isEqualTo(WetFrom.RAIN);
  }

  @Test
  void rainThatWasSeenToEndIsCertain() {
    GrassDay day = today(fine(new DayWeather.Water(2, RainTime.ended(9), 0)));
    assertThat(day.dryFraction(8)).isZero();
    assertThat(day.dryFraction(14)).isEqualTo(1);
  }

  @Test
  void anUnknownHourOfRainLeavesTheDayInDoubt() {
    GrassDay day = today(fine(new DayWeather.Water(4, RainTime.ANY_HOUR, 0)));
    assertThat(day.dryFraction(14)).isBetween(0.3, 0.9);
    assertThat(day.fit(0.95, 0)).isEmpty();
  }

  @Test
  void longRainUnderCloudKeepsItWetAllDay() {
    DayWeather.Air dull = new DayWeather.Air(11, 14, ea(11), 3, 2);
    GrassDay day = today(new DayWeather(dull, new DayWeather.Water(30, RainTime.ANY_HOUR, 0)));
    assertThat(day.fit(0.5, 0)).isEmpty();
  }

  @Test
  void rainOfLastEveningIsGoneByMidday() {
    GrassHours hours = hours(NEW_YORK, MAY);
    DayWeather.Water evening = new DayWeather.Water(8, RainTime.ended(22), 0);
    hours.add(fine(evening), fine(NONE), fine(NONE));
    assertThat(only(hours.today().fit(0.5, 0)).from()).isBetween(8, 12);
    assertThat(hours.today().mostlyWetFrom(4)).isEqualTo(WetFrom.RAIN);
    assertThat(hours.tomorrow().mostlyWetFrom(4)).isEqualTo(WetFrom.DEW);
  }

  @Test
  void sprinklersOfTheEarlyMorningDryAfterTheDew() {
    GrassDay watered = today(fine(new DayWeather.Water(0, RainTime.ANY_HOUR, 10)));
    assertThat(watered.mostlyWetFrom(7)).isEqualTo(WetFrom.WATERING);
    assertThat(only(watered.fit(0.5, 0)).from())
        .isGreaterThanOrEqualTo(only(today(fine(NONE)).fit(0.5, 0)).from());
  }

  @Test
  void frostHoldsUntilTheAirHasWarmed() {
    DayWeather.Air cold = new DayWeather.Air(-2, 11, ea(-3), 16, 2);
    GrassDay day = today(new DayWeather(cold, NONE));
    assertThat(day.frostFraction(8)).isEqualTo(1);
    assertThat(day.frostGoneAt()).isBetween(9, 11);
    assertThat(only(day.fit(0.5, 0)).from()).isGreaterThanOrEqualTo(day.frostGoneAt());
    assertThat(today(fine(NONE)).frostGoneAt()).isZero();
  }

  @Test
  void aDayOfFrostHasNoHours() {
    DayWeather.Air hard = new DayWeather.Air(-9, 1, ea(-9), 8, 2);
    GrassDay day = today(new DayWeather(hard, NONE));
    assertThat(day.frostGoneAt()).isEqualTo(24);
    assertThat(day.fit(0.5, 0)).isEmpty();
  }

  @Test
  void sharesAreTakenOverAllWeathers() {
    GrassHours hours = hours(NEW_YORK, MAY);
    DayWeather dull =
        new DayWeather(
            new DayWeather.Air(11, 14, ea(11), 3, 2),
            new DayWeather.Water(30, RainTime.ANY_HOUR, 0));
    hours.add(fine(NONE), fine(NONE), dull);
    hours.add(fine(NONE), fine(NONE), fine(NONE));
    assertThat(hours.today().dryFraction(14)).isEqualTo(1);
    assertThat(hours.tomorrow().dryFraction(14)).isEqualTo(0.5);
    assertThat(hours.tomorrow().date()).isEqualTo(MAY.plusDays(1));
  }

  @Test
  void everyHourIsDryOrWetFromSomething() {
    GrassHours hours = hours(NEW_YORK, MAY);
    hours.add(fine(DayWeather.Water.rain(3)), fine(DayWeather.Water.rain(9)), fine(NONE));
    for (GrassDay day : List.of(hours.today(), hours.tomorrow())) {
      for (int hour = 0; hour < 24; hour++) {
        double sum = day.dryFraction(hour);
        for (WetFrom from : WetFrom.values()) {
          sum += day.wetFraction(hour, from);
        }
        assertThat(sum).isCloseTo(1, org.assertj.core.api.Assertions.within(1e-12));
      }
    }
  }

  @Test
  void theFarNorthHasHoursToo() {
    Site north = new Site(78, 10, 10, 15.6, ZoneId.of("Arctic/Longyearbyen"));
    for (int month = 1; month <= 12; month++) {
      GrassHours hours = hours(north, MAY.withMonth(month));
      hours.add(fine(NONE), fine(NONE), fine(NONE));
      assertThat(hours.today().temperatureC(12)).isBetween(9.0, 21.0);
    }
  }

  @Test
  void theMeanOfTheHoursLiesNearTheMeanOfTheExtremes() {
    GrassDay day = today(fine(NONE));
    double sum = 0;
    for (int hour = 0; hour < 24; hour++) {
      assertThat(day.temperatureC(hour)).isBetween(9.0, 21.0);
      sum += day.temperatureC(hour);
    }
    assertThat(sum / 24).isBetween(13.5, 16.5);
  }

  @Test
  void limitsThatDoNotGoTogetherAreRefused() {
    assertThatThrownBy(() -> GrassLimits.standard().withDryEnoughMm(0.4))
        .hasMessageContaining("dry enough at 0.4 mm")
        .hasMessageContaining("0.3");
    assertThatThrownBy(() -> new RainTime(12, 12, 5))
        .hasMessageContaining("12")
        .hasMessageContaining("5");
    assertThatThrownBy(() -> hours(NEW_YORK, MAY).today())
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void leavesSeenDryAreDryWhateverWasReckoned() {
    DayWeather.Water shower = new DayWeather.Water(3, new RainTime(0, 9, 13), 0);
    GrassDay reckoned = seen(SeenToday.NOTHING, fine(shower));
    GrassDay looked = seen(new SeenToday(12, NAN, NAN, NAN), fine(shower));
    assertThat(reckoned.dryFraction(12)).isLessThan(1);
    assertThat(looked.dryFraction(12)).isEqualTo(1);
    assertThat(looked.dryFraction(11)).isEqualTo(reckoned.dryFraction(11));
  }

  @Test
  void leavesSeenWetAreWetThenAndDryLater() {
    GrassDay looked = seen(new SeenToday(NAN, 13, NAN, NAN), fine(NONE));
    assertThat(looked.dryFraction(12)).isEqualTo(1);
    assertThat(looked.dryFraction(13)).isZero();
    assertThat(looked.dryFraction(16)).isEqualTo(1);
  }

  @Test
  void frostThatWasSeenLiesUntilTheAirHasWarmedFurther() {
    DayWeather.Air cool = new DayWeather.Air(4, 14, ea(2), 18, 2);
    GrassDay reckoned = seen(SeenToday.NOTHING, new DayWeather(cool, NONE));
    GrassDay looked = seen(new SeenToday(NAN, NAN, 8, NAN), new DayWeather(cool, NONE));
    assertThat(reckoned.frostGoneAt()).isZero();
    assertThat(looked.frostGoneAt()).isBetween(9, 11);
    assertThat(looked.frostFraction(18)).isZero();
  }

  @Test
  void frostThatWasLookedForAndNotThereIsGone() {
    DayWeather.Air cold = new DayWeather.Air(-2, 11, ea(-3), 16, 2);
    GrassDay looked = seen(new SeenToday(NAN, NAN, NAN, 8), new DayWeather(cold, NONE));
    assertThat(looked.frostFraction(7)).isEqualTo(1);
    assertThat(looked.frostFraction(8)).isZero();
  }

  private static GrassDay seen(SeenToday seen, DayWeather weather) {
    GrassHours hours = new GrassHours(NEW_YORK, MAY, GrassLimits.standard(), seen);
    hours.add(weather.with(NONE), weather, weather.with(NONE));
    return hours.today();
  }

  private static GrassHours hours(Site site, LocalDate today) {
    return new GrassHours(site, today, GrassLimits.standard(), SeenToday.NOTHING);
  }

  private static DayWeather fine(DayWeather.Water water) {
    return new DayWeather(new DayWeather.Air(9, 21, ea(9), 22, 3), water);
  }

  private static double ea(double dewPointC) {
    return Humidity.fromDewPointKPa(dewPointC);
  }

  private static GrassDay today(DayWeather weather) {
    GrassHours hours = hours(NEW_YORK, MAY);
    hours.add(weather.with(NONE), weather, weather.with(NONE));
    return hours.today();
  }

  private static Span only(List<Span> spans) {
    assertThat(spans).hasSize(1);
    return spans.get(0);
  }
}
