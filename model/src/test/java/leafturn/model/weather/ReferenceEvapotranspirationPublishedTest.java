package leafturn.model.weather;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leafturn.model.weather.WeatherSeries.Quantity;
import leafturn.quantity.PublishedCheck;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ReferenceEvapotranspirationPublishedTest {
  static List<PublishedCheck> checks() {
    return PublishedCheck.of(
        ReferenceEvapotranspirationPublishedTest.class, "reference-evapotranspiration.csv");
  }

  @ParameterizedTest
  @MethodSource("checks")
  void agreesWithItsSource(PublishedCheck check) {
    check.agreesWith(
        switch (check.function()) {
          case "windAt2mMPerS" -> wind(check);
          case "monthlySoilHeatFluxMjPerM2" ->
              ReferenceEvapotranspiration.monthlySoilHeatFluxMjPerM2(
                  check.in("previousMonthC"), check.in("nextMonthC"));
          case "runningMonthSoilHeatFluxMjPerM2" ->
              ReferenceEvapotranspiration.runningMonthSoilHeatFluxMjPerM2(
                  check.in("previousMonthC"), check.in("thisMonthC"));
          case "netRadiationFromSunshine" -> netRadiation(check);
          case "combinationFromSunshine" -> combination(check);
          case "dailyFromTemperature" -> daily(check);
          case "hargreavesMm" ->
              ReferenceEvapotranspiration.hargreavesMm(
                  check.in("minimumC"), check.in("maximumC"), extraterrestrial(check));
          default -> throw check.unknownFunction();
        });
  }

  private static double wind(PublishedCheck check) {
    return ReferenceEvapotranspiration.windAt2mMPerS(
        check.in("windMPerS"), check.in("windHeightM"));
  }

  private static double extraterrestrial(PublishedCheck check) {
    return Radiation.extraterrestrialMjPerM2(check.in("latitudeDeg"), check.wholeIn("dayOfYear"));
  }

  private static double netRadiation(PublishedCheck check) {
    double extraterrestrial = extraterrestrial(check);
    double daylength =
        Radiation.daylengthHours(check.in("latitudeDeg"), check.wholeIn("dayOfYear"));
    double global =
        Radiation.fromSunshineMjPerM2(check.in("sunshineHours"), daylength, extraterrestrial);
    double clearSky = Radiation.clearSkyMjPerM2(extraterrestrial, check.in("elevationM"));
    return ReferenceEvapotranspiration.netRadiationMjPerM2(
        Radiation.netShortwaveMjPerM2(global),
        Radiation.netLongwaveMjPerM2(
            check.in("minimumC"),
            check.in("maximumC"),
            check.in("vapourPressureKPa"),
            Radiation.clearnessFraction(global, clearSky)));
  }

  private static double combination(PublishedCheck check) {
    double minimumC = check.in("minimumC");
    double maximumC = check.in("maximumC");
    return ReferenceEvapotranspiration.combinationMm(
        new ReferenceEvapotranspiration.Day(
            (minimumC + maximumC) / 2,
            netRadiation(check),
            check.in("soilHeatFluxMjPerM2"),
            wind(check),
            Humidity.meanSaturationVapourPressureKPa(minimumC, maximumC),
            check.in("vapourPressureKPa"),
            ReferenceEvapotranspiration.psychrometricConstantKPaPerC(
                ReferenceEvapotranspiration.atmosphericPressureKPa(check.in("elevationM")))));
  }

  private static double daily(PublishedCheck check) {
    Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    values.put(Quantity.MINIMUM_C, new double[] {check.in("minimumC")});
    values.put(Quantity.MAXIMUM_C, new double[] {check.in("maximumC")});
    values.put(Quantity.RAIN_MM, new double[] {0});
    if (check.has("windMPerS")) {
      values.put(Quantity.WIND_M_PER_S, new double[] {check.in("windMPerS")});
    }
    LocalDate day = LocalDate.ofYearDay(2013, check.wholeIn("dayOfYear"));
    Site site =
        new Site(
            check.in("latitudeDeg"), check.in("elevationM"), check.in("windHeightM"), null, null);
    return DailyEvapotranspiration.of(new WeatherSeries(day, values), site, 0).referenceMm();
  }
}
