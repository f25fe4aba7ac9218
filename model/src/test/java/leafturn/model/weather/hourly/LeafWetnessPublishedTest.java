package leafturn.model.weather.hourly;

import java.util.List;
import leafturn.model.weather.Humidity;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LeafWetnessPublishedTest {
  private static final double GAMMA_KPA_PER_C = 0.0665;

  static List<PublishedCheck> checks() {
    return PublishedCheck.of(LeafWetnessPublishedTest.class, "leaf-wetness.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    double temperature = check.in("airTemperatureC");
    double humidity = check.in("humidityPercent");
    check.agreesWith(
        switch (check.function()) {
          case "calmScore" ->
              LeafWetness.calmScore(
                  temperature, humidity, check.in("windMPerS"), check.in("depressionC"));
          case "windyScore" ->
              LeafWetness.windyScore(
                  temperature, humidity, check.in("windMPerS"), check.in("depressionC"));
          case "wetByTree" ->
              LeafWetness.wetByTree(
                      temperature, humidity, check.in("windMPerS"), check.in("depressionC"))
                  ? 1
                  : 0;
          case "depressionC" ->
              temperature - Humidity.dewPointC(vapourPressureKPa(temperature, humidity));
          case "evaporationMmPerHour" ->
              WetCanopy.evaporationMmPerHour(
                  temperature,
                  vapourPressureKPa(temperature, humidity),
                  check.in("windMPerS"),
                  check.in("netRadiationMjPerM2"),
                  GAMMA_KPA_PER_C);
          default -> throw check.unknownFunction();
        });
  }

  private static double vapourPressureKPa(double temperatureC, double humidityPercent) {
    return humidityPercent / 100 * Humidity.saturationVapourPressureKPa(temperatureC);
  }
}
