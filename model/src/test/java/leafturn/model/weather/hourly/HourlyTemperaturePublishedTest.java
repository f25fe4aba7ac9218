package leafturn.model.weather.hourly;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HourlyTemperaturePublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(HourlyTemperaturePublishedTest.class, "hourly-temperature.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "printed" -> printedC(check);
          case "sineRise" -> sineRiseC(check);
          case "plainFraction" -> HourlyTemperature.plainFraction(check.in("hour"));
          default -> throw check.unknownFunction();
        });
  }

  /** Day and night as printed, the same extremes on both days. */
  private static double printedC(PublishedCheck check) {
    double day = check.in("daylengthHours");
    double hours = check.in("hour") - check.in("sunriseHour");
    double minimum = check.in("minimumC");
    double range = check.in("maximumC") - minimum;
    if (hours <= day) {
      return minimum + range * HourlyTemperature.dayFraction(hours, day);
    }
    double sunsetRange = range * HourlyTemperature.dayFraction(day, day);
    return minimum + sunsetRange * HourlyTemperature.printedNightFraction(hours - day, 24 - day);
  }

  private static double sineRiseC(PublishedCheck check) {
    double share =
        HourlyTemperature.sineRiseFraction(
            check.in("hour") - check.in("sunriseHour"), check.in("daylengthHours"));
    return check.in("minimumC") + share * (check.in("maximumC") - check.in("minimumC"));
  }
}
