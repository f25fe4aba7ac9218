package leafturn.model.weather;

import java.util.List;
import leafturn.quantity.PublishedCheck;
import leafturn.quantity.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RadiationPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(RadiationPublishedTest.class, "radiation.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "inverseSunDistance" -> Radiation.inverseSunDistance(check.wholeIn("dayOfYear"));
          case "declinationRad" -> Radiation.declinationRad(check.wholeIn("dayOfYear"));
          case "sunsetHourAngleRad" ->
              Radiation.sunsetHourAngleRad(check.in("latitudeDeg"), check.wholeIn("dayOfYear"));
          case "daylengthHours" ->
              Radiation.daylengthHours(check.in("latitudeDeg"), check.wholeIn("dayOfYear"));
          case "extraterrestrialMjPerM2" -> extraterrestrial(check);
          case "extraterrestrialMm" ->
              Unit.MEGAJOULE_PER_M2.to(Unit.EVAPORATED_MILLIMETRE, extraterrestrial(check));
          case "clearSkyMjPerM2" ->
              Radiation.clearSkyMjPerM2(
                  check.in("extraterrestrialMjPerM2"), check.in("elevationM"));
          case "fromSunshineMjPerM2" ->
              Radiation.fromSunshineMjPerM2(
                  check.in("sunshineHours"),
                  check.in("daylengthHours"),
                  check.in("extraterrestrialMjPerM2"));
          case "fromTemperatureRangeMjPerM2" ->
              fromTemperature(check, check.in("extraterrestrialMjPerM2"));
          case "netShortwaveMjPerM2" -> Radiation.netShortwaveMjPerM2(check.in("globalMjPerM2"));
          case "netLongwaveMjPerM2" -> netLongwave(check, check.in("clearnessFraction"));
          case "netRadiationMjPerM2" ->
              ReferenceEvapotranspiration.netRadiationMjPerM2(
                  check.in("netShortwaveMjPerM2"), check.in("netLongwaveMjPerM2"));
          case "netShortwaveFromTemperatureMjPerM2" -> netShortwaveFromTemperature(check);
          case "netLongwaveFromTemperatureMjPerM2" -> netLongwaveFromTemperature(check);
          case "netFromTemperatureMjPerM2" ->
              ReferenceEvapotranspiration.netRadiationMjPerM2(
                  netShortwaveFromTemperature(check), netLongwaveFromTemperature(check));
          default -> throw check.unknownFunction();
        });
  }

  private static double extraterrestrial(PublishedCheck check) {
    return Radiation.extraterrestrialMjPerM2(check.in("latitudeDeg"), check.wholeIn("dayOfYear"));
  }

  private static double fromTemperature(PublishedCheck check, double extraterrestrialMjPerM2) {
    return Radiation.fromTemperatureRangeMjPerM2(
        check.in("minimumC"),
        check.in("maximumC"),
        extraterrestrialMjPerM2,
        check.in("coefficient"));
  }

  private static double netShortwaveFromTemperature(PublishedCheck check) {
    return Radiation.netShortwaveMjPerM2(fromTemperature(check, extraterrestrial(check)));
  }

  private static double netLongwaveFromTemperature(PublishedCheck check) {
    double extraterrestrial = extraterrestrial(check);
    return netLongwave(
        check,
        Radiation.clearnessFraction(
            fromTemperature(check, extraterrestrial),
            Radiation.clearSkyMjPerM2(extraterrestrial, check.in("elevationM"))));
  }

  private static double netLongwave(PublishedCheck check, double clearnessFraction) {
    return Radiation.netLongwaveMjPerM2(
        check.in("minimumC"),
        check.in("maximumC"),
        check.in("vapourPressureKPa"),
        clearnessFraction);
  }
}
