package leafturn.model.weather.hourly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import leafturn.model.weather.Radiation;
import leafturn.model.weather.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HourlyClosedFormTest {
  private static final LocalDate MAY = LocalDate.of(2026, 5, 4);

  /** How far the equation of time may lie from the almanac, h. */
  private static final double A_MINUTE_OR_SO = 0.02;

  @ParameterizedTest
  @CsvSource({"40.8,124", "-34,3", "80,172", "80,355", "0,80", "69,150"})
  void theHoursOfSunAddUpToTheDay(double latitudeDeg, int dayOfYear) {
    double sum = 0;
    for (int hour = 0; hour < 24; hour++) {
      sum += HourlyRadiation.extraterrestrialMjPerM2(latitudeDeg, dayOfYear, hour, hour + 1);
    }
    assertThat(sum)
        .isCloseTo(Radiation.extraterrestrialMjPerM2(latitudeDeg, dayOfYear), within(1e-9));
  }

  @Test
  void theHoursOfSunAddUpToTheDayOnAClockFarFromTheSun() {
    Site west = new Site(39.5, 1300, 10, 76.0, ZoneId.of("Asia/Shanghai"));
    SolarClock clock = SolarClock.of(west, MAY);
    Daylight sun = new Daylight(west, MAY, clock);
    double sum = 0;
    for (double share : sun.radiationShare) {
      sum += share;
    }
    assertThat(clock.hoursAhead()).isCloseTo(76 / 15.0 - 8 + 0.05, within(0.02));
    assertThat(sum).isCloseTo(1, within(1e-12));
  }

  @Test
  void theNightMeetsTheNextMinimumWithoutAStep() {
    double hoursToMinimum = 9.83;
    assertThat(HourlyTemperature.nightFraction(0, hoursToMinimum)).isEqualTo(1);
    assertThat(HourlyTemperature.nightFraction(hoursToMinimum, hoursToMinimum))
        .isCloseTo(0, within(1e-15));
    assertThat(HourlyTemperature.dayFraction(HourlyTemperature.MINIMUM_LAG_HOURS, 14)).isZero();
    assertThat(HourlyTemperature.printedNightFraction(10, 10))
        .as("the printed curve stops short, by this share")
        .isCloseTo(0.1108, within(5e-5));
  }

  @Test
  void theSunIsBehindTheClockInSummerTime() {
    Site newYork = new Site(40.8, 40, 10, -74.0, ZoneId.of("America/New_York"));
    SolarClock summer = SolarClock.of(newYork, MAY);
    SolarClock winter = SolarClock.of(newYork, LocalDate.of(2026, 12, 4));
    assertThat(summer.clock()).isTrue();
    assertThat(summer.hoursAhead()).isCloseTo(-74 / 15.0 + 4 + 0.053, within(A_MINUTE_OR_SO));
    assertThat(winter.hoursAhead()).isCloseTo(-74 / 15.0 + 5 + 0.16, within(A_MINUTE_OR_SO));
    assertThat(SolarClock.of(Site.at(40.8, 40), MAY)).isEqualTo(new SolarClock(0, false));
  }

  @Test
  void aLongitudeBesideTheDateLineIsNoDayAhead() {
    Site island = new Site(-13.8, 10, 10, -171.8, ZoneId.of("Pacific/Apia"));
    assertThat(SolarClock.of(island, MAY).hoursAhead()).isCloseTo(-0.4, within(0.1));
  }

  @Test
  void theEquationOfTimeHasItsKnownExtremes() {
    assertThat(SolarClock.equationOfTimeHours(42)).isCloseTo(-14.2 / 60, within(0.01));
    assertThat(SolarClock.equationOfTimeHours(307)).isCloseTo(16.4 / 60, within(0.01));
  }

  @ParameterizedTest
  @CsvSource({"0.4", "3", "17", "80"})
  void noRainIsLostOnTheHours(double rainMm) {
    for (int which = 0; which < Showers.TIMES; which++) {
      double[] hours = new double[72];
      Showers.add(hours, 24, rainMm, RainTime.ANY_HOUR, which);
      Showers.add(hours, 24, rainMm, new RainTime(5.5, 5.75, 7.25), which);
      double sum = 0;
      for (int hour = 0; hour < 72; hour++) {
        sum += hours[hour];
        assertThat(hour >= 24 && hour < 48 || hours[hour] == 0).isTrue();
      }
      assertThat(sum).isCloseTo(2 * rainMm, within(1e-9));
    }
  }
}
