package leafturn.model.weather;

/** Reference evapotranspiration of a short, well watered grass cover, mm a day, after FAO-56. */
public final class ReferenceEvapotranspiration {
  /** Wind assumed where none was measured, m/s at 2 m: the mean of over 2000 stations. */
  public static final double MISSING_WIND_M_PER_S = 2;

  /** Least wind that counts, m/s at 2 m: below it air still mixes by its own warmth. */
  public static final double LEAST_WIND_M_PER_S = 0.5;

  private static final double MM_PER_MJ = 0.408;

  private ReferenceEvapotranspiration() {}

  /**
   * What the combination equation needs of one day.
   *
   * @param meanTemperatureC T = (Tmin + Tmax)/2, °C
   * @param netRadiationMjPerM2 Rn, MJ/m2
   * @param soilHeatFluxMjPerM2 G, MJ/m2, 0 for a single day
   * @param windAt2mMPerS u2, m/s
   * @param saturationVapourPressureKPa es, kPa
   * @param actualVapourPressureKPa ea, kPa
   * @param psychrometricConstantKPaPerC γ, kPa/°C
   */
  public record Day(
      double meanTemperatureC,
      double netRadiationMjPerM2,
      double soilHeatFluxMjPerM2,
      double windAt2mMPerS,
      double saturationVapourPressureKPa,
      double actualVapourPressureKPa,
      double psychrometricConstantKPaPerC) {
    public Day {
      WeatherBounds.AIR_TEMPERATURE.checked(meanTemperatureC);
      WeatherBounds.NET_RADIATION.checked(netRadiationMjPerM2);
      WeatherBounds.NET_RADIATION.checked(soilHeatFluxMjPerM2);
      WeatherBounds.WIND.checked(windAt2mMPerS);
      WeatherBounds.VAPOUR_PRESSURE.checked(saturationVapourPressureKPa);
      WeatherBounds.VAPOUR_PRESSURE.checked(actualVapourPressureKPa);
      WeatherBounds.PSYCHROMETRIC.checked(psychrometricConstantKPaPerC);
    }
  }

  /**
   * Atmospheric pressure at a height, kPa: P = 101.3 ((293 - 0.0065 z)/293)^5.26.
   *
   * @param elevationM z, m above sea level, -430 to 8850
   * @throws IllegalArgumentException outside the range
   * @source fao56, eq. 7
   */
  public static double atmosphericPressureKPa(double elevationM) {
    return 101.3
        * Math.pow((293 - 0.0065 * WeatherBounds.ELEVATION.checked(elevationM)) / 293, 5.26);
  }

  /**
   * Psychrometric constant, kPa/°C: γ = 0.000665 P.
   *
   * @param pressureKPa P, kPa, 20 to 115
   * @throws IllegalArgumentException outside the range
   * @source fao56, eq. 8
   */
  public static double psychrometricConstantKPaPerC(double pressureKPa) {
    return 0.665e-3 * WeatherBounds.PRESSURE.checked(pressureKPa);
  }

  /**
   * Wind at 2 m over grass from wind at another height, m/s: u2 = uz 4.87 / ln(67.8 z - 5.42).
   *
   * @param windMPerS uz, m/s, 0 to 115
   * @param heightM z, m above ground, 0.5 to 100; at exactly 2 m the wind is returned as measured,
   *     since the printed factor there is 1.0002 by rounding
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 47
   */
  public static double windAt2mMPerS(double windMPerS, double heightM) {
    WeatherBounds.WIND.checked(windMPerS);
    WeatherBounds.WIND_HEIGHT.checked(heightM);
    return heightM == 2 ? windMPerS : windMPerS * 4.87 / Math.log(67.8 * heightM - 5.42);
  }

  /**
   * Net radiation, MJ/m2: Rn = Rns - Rnl.
   *
   * @param netShortwaveMjPerM2 Rns, MJ/m2
   * @param netLongwaveMjPerM2 Rnl, outgoing, MJ/m2
   * @throws IllegalArgumentException outside -60 to 60 MJ/m2
   * @source fao56, eq. 40
   */
  public static double netRadiationMjPerM2(double netShortwaveMjPerM2, double netLongwaveMjPerM2) {
    return WeatherBounds.NET_RADIATION.checked(netShortwaveMjPerM2)
        - WeatherBounds.NET_RADIATION.checked(netLongwaveMjPerM2);
  }

  /**
   * Soil heat flux of a single day, MJ/m2: taken as 0 under a grass cover.
   *
   * @source fao56, eq. 42
   */
  public static double dailySoilHeatFluxMjPerM2() {
    return 0;
  }

  /**
   * Mean daily soil heat flux of a month when the next month is known, MJ/m2: G = 0.07 (Ti+1 -
   * Ti-1).
   *
   * @param previousMonthC mean air temperature of the month before, °C, -90 to 60
   * @param nextMonthC mean air temperature of the month after, °C, -90 to 60
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 43
   */
  public static double monthlySoilHeatFluxMjPerM2(double previousMonthC, double nextMonthC) {
    WeatherBounds.AIR_TEMPERATURE.checked(previousMonthC);
    return 0.07 * (WeatherBounds.AIR_TEMPERATURE.checked(nextMonthC) - previousMonthC);
  }

  /**
   * Mean daily soil heat flux of a month when the next month is not known, MJ/m2: G = 0.14 (Ti -
   * Ti-1).
   *
   * @param previousMonthC mean air temperature of the month before, °C, -90 to 60
   * @param thisMonthC mean air temperature of the month, °C, -90 to 60
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 44
   */
  public static double runningMonthSoilHeatFluxMjPerM2(double previousMonthC, double thisMonthC) {
    WeatherBounds.AIR_TEMPERATURE.checked(previousMonthC);
    return 0.14 * (WeatherBounds.AIR_TEMPERATURE.checked(thisMonthC) - previousMonthC);
  }

  /**
   * Reference evapotranspiration by the combination equation, mm a day: ET0 = (0.408 Δ (Rn - G) + γ
   * 900/(T + 273) u2 (es - ea)) / (Δ + γ (1 + 0.34 u2)). May be slightly negative on a dewy winter
   * day; a water balance holds it to 0.
   *
   * @param day temperature, net radiation, soil heat flux, wind and vapour pressures
   * @return mm a day
   * @source fao56, eq. 6
   */
  public static double combinationMm(Day day) {
    double slope = Humidity.saturationSlopeKPaPerC(day.meanTemperatureC());
    double gamma = day.psychrometricConstantKPaPerC();
    double wind = day.windAt2mMPerS();
    double radiationTerm =
        MM_PER_MJ * slope * (day.netRadiationMjPerM2() - day.soilHeatFluxMjPerM2());
    double vapourDeficitKPa = day.saturationVapourPressureKPa() - day.actualVapourPressureKPa();
    double windTerm = gamma * 900 / (day.meanTemperatureC() + 273) * wind * vapourDeficitKPa;
    return (radiationTerm + windTerm) / (slope + gamma * (1 + 0.34 * wind));
  }

  /**
   * Reference evapotranspiration from temperature alone, mm a day: 0.0023 (Tmean + 17.8) √(Tmax -
   * Tmin) 0.408 Ra, at least 0.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param extraterrestrialMjPerM2 Ra, MJ/m2, 0 to 60
   * @throws IllegalArgumentException outside the ranges, or Tmin above Tmax
   * @source fao56, eq. 52
   */
  public static double hargreavesMm(
      double minimumC, double maximumC, double extraterrestrialMjPerM2) {
    WeatherBounds.temperatures(minimumC, maximumC);
    double waterEquivalentMm = MM_PER_MJ * WeatherBounds.RADIATION.checked(extraterrestrialMjPerM2);
    double meanC = (minimumC + maximumC) / 2;
    return Math.max(
        0, 0.0023 * (meanC + 17.8) * Math.sqrt(maximumC - minimumC) * waterEquivalentMm);
  }
}
