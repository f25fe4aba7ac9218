package leafturn.model.weather;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HumidityPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(HumidityPublishedTest.class, "humidity.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "atmosphericPressureKPa" ->
              ReferenceEvapotranspiration.atmosphericPressureKPa(check.in("elevationM"));
          case "psychrometricConstantKPaPerC" ->
              ReferenceEvapotranspiration.psychrometricConstantKPaPerC(check.in("pressureKPa"));
          case "saturationVapourPressureKPa" ->
              Humidity.saturationVapourPressureKPa(check.in("airTemperatureC"));
          case "meanSaturationVapourPressureKPa" -> saturation(check);
          case "saturationSlopeKPaPerC" ->
              Humidity.saturationSlopeKPaPerC(check.in("airTemperatureC"));
          case "fromPsychrometerKPa" ->
              Humidity.fromPsychrometerKPa(
                  check.in("dryBulbC"), check.in("wetBulbC"), check.in("pressureKPa"));
          case "fromHumidityExtremesKPa" -> fromExtremes(check);
          case "fromMaximumHumidityKPa" ->
              Humidity.fromMaximumHumidityKPa(
                  check.in("minimumC"), check.in("humidityMaximumPercent"));
          case "fromMeanHumidityKPa" ->
              Humidity.fromMeanHumidityKPa(
                  check.in("minimumC"), check.in("maximumC"), check.in("humidityMeanPercent"));
          case "vapourPressureDeficitKPa" -> saturation(check) - fromExtremes(check);
          case "dewPointAtHumidityC" ->
              Humidity.dewPointC(
                  check.in("humidityMeanPercent")
                      / 100
                      * Humidity.saturationVapourPressureKPa(check.in("airTemperatureC")));
          default -> throw check.unknownFunction();
        });
  }

  private static double saturation(PublishedCheck check) {
    return Humidity.meanSaturationVapourPressureKPa(check.in("minimumC"), check.in("maximumC"));
  }

  private static double fromExtremes(PublishedCheck check) {
    return Humidity.fromHumidityExtremesKPa(
        check.in("minimumC"),
        check.in("maximumC"),
        check.in("humidityMaximumPercent"),
        check.in("humidityMinimumPercent"));
  }
}
