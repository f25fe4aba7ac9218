package leafturn.model.weather;

/** Sun and sky by the day: geometry, extraterrestrial, global and net radiation, MJ/m2. */
public final class Radiation {
  /** kRs of equation 50 away from the sea, °C^-0.5. */
  public static final double INLAND_COEFFICIENT = 0.16;

  /** kRs of equation 50 on a coast, °C^-0.5. */
  public static final double COASTAL_COEFFICIENT = 0.19;

  private static final double SOLAR_CONSTANT_MJ_PER_M2_MIN = 0.0820;
  private static final double STEFAN_BOLTZMANN_MJ_PER_M2_K4 = 4.903e-9;
  private static final double KELVIN_OFFSET = 273.16;
  private static final double ALBEDO = 0.23;
  private static final double SUNLESS_RATIO = 0.5;

  private Radiation() {}

  /**
   * Inverse relative distance of Earth and sun: dr = 1 + 0.033 cos(2πJ/365).
   *
   * @param dayOfYear J, 1 to 366
   * @throws IllegalArgumentException outside the range
   * @source fao56, eq. 23
   */
  public static double inverseSunDistance(int dayOfYear) {
    return 1 + 0.033 * Math.cos(yearAngleRad(dayOfYear));
  }

  /**
   * Solar declination, rad: δ = 0.409 sin(2πJ/365 - 1.39).
   *
   * @param dayOfYear J, 1 to 366
   * @throws IllegalArgumentException outside the range
   * @source fao56, eq. 24
   */
  public static double declinationRad(int dayOfYear) {
    return 0.409 * Math.sin(yearAngleRad(dayOfYear) - 1.39);
  }

  /**
   * Sunset hour angle, rad: ωs = arccos(-tan φ tan δ). The argument is held to -1 to 1, so the
   * polar night gives 0 and the midnight sun π.
   *
   * @param latitudeDeg φ, degrees north, -90 to 90
   * @param dayOfYear J, 1 to 366
   * @return 0 to π
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 25
   */
  public static double sunsetHourAngleRad(double latitudeDeg, int dayOfYear) {
    double latitudeRad = latitudeRad(latitudeDeg);
    double cosine = -Math.tan(latitudeRad) * Math.tan(declinationRad(dayOfYear));
    return Math.acos(Math.max(-1, Math.min(1, cosine)));
  }

  /**
   * Daylength, h: N = 24 ωs / π.
   *
   * @param latitudeDeg degrees north, -90 to 90
   * @param dayOfYear J, 1 to 366
   * @return 0 to 24
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 34
   */
  public static double daylengthHours(double latitudeDeg, int dayOfYear) {
    return 24 / Math.PI * sunsetHourAngleRad(latitudeDeg, dayOfYear);
  }

  /**
   * Radiation of a day at the top of the air, MJ/m2: Ra = (1440/π) 0.0820 dr (ωs sin φ sin δ + cos
   * φ cos δ sin ωs).
   *
   * @param latitudeDeg φ, degrees north, -90 to 90
   * @param dayOfYear J, 1 to 366
   * @return 0 in the polar night, otherwise positive
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 21
   */
  public static double extraterrestrialMjPerM2(double latitudeDeg, int dayOfYear) {
    double latitudeRad = latitudeRad(latitudeDeg);
    double declinationRad = declinationRad(dayOfYear);
    double sunsetRad = sunsetHourAngleRad(latitudeDeg, dayOfYear);
    double geometry =
        sunsetRad * Math.sin(latitudeRad) * Math.sin(declinationRad)
            + Math.cos(latitudeRad) * Math.cos(declinationRad) * Math.sin(sunsetRad);
    return 1440
        / Math.PI
        * SOLAR_CONSTANT_MJ_PER_M2_MIN
        * inverseSunDistance(dayOfYear)
        * Math.max(0, geometry);
  }

  /**
   * Global radiation of a cloudless day, MJ/m2: Rso = (0.75 + 2e-5 z) Ra.
   *
   * @param extraterrestrialMjPerM2 Ra, MJ/m2, 0 to 60
   * @param elevationM z, m above sea level, -430 to 8850
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 37
   */
  public static double clearSkyMjPerM2(double extraterrestrialMjPerM2, double elevationM) {
    WeatherBounds.ELEVATION.checked(elevationM);
    return (0.75 + 2e-5 * elevationM) * WeatherBounds.RADIATION.checked(extraterrestrialMjPerM2);
  }

  /**
   * Global radiation from hours of sunshine, MJ/m2: Rs = (0.25 + 0.50 n/N) Ra.
   *
   * @param sunshineHours n, h, 0 to 24, held to N
   * @param daylengthHours N, h, 0 to 24; 0 gives no radiation
   * @param extraterrestrialMjPerM2 Ra, MJ/m2, 0 to 60
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 35
   */
  public static double fromSunshineMjPerM2(
      double sunshineHours, double daylengthHours, double extraterrestrialMjPerM2) {
    WeatherBounds.SUNSHINE.checked(sunshineHours);
    WeatherBounds.SUNSHINE.checked(daylengthHours);
    WeatherBounds.RADIATION.checked(extraterrestrialMjPerM2);
    if (daylengthHours == 0) {
      return 0;
    }
    double share = Math.min(1, sunshineHours / daylengthHours);
    return (0.25 + 0.50 * share) * extraterrestrialMjPerM2;
  }

  /**
   * Global radiation from the day's temperature range, MJ/m2: Rs = kRs √(Tmax - Tmin) Ra. Not held
   * to the cloudless day; the caller caps it at {@link #clearSkyMjPerM2}.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param extraterrestrialMjPerM2 Ra, MJ/m2, 0 to 60
   * @param coefficient kRs, {@link #INLAND_COEFFICIENT} or {@link #COASTAL_COEFFICIENT}
   * @throws IllegalArgumentException outside the ranges, or Tmin above Tmax
   * @source fao56, eq. 50
   */
  public static double fromTemperatureRangeMjPerM2(
      double minimumC, double maximumC, double extraterrestrialMjPerM2, double coefficient) {
    WeatherBounds.temperatures(minimumC, maximumC);
    WeatherBounds.RADIATION.checked(extraterrestrialMjPerM2);
    return coefficient * Math.sqrt(maximumC - minimumC) * extraterrestrialMjPerM2;
  }

  /**
   * Share of a cloudless day's radiation that came down, at most 1. Where the sun does not rise the
   * ratio has no value; 0.5 stands for the clouds of a humid place (our judgement).
   *
   * @param globalMjPerM2 Rs, MJ/m2, 0 to 60
   * @param clearSkyMjPerM2 Rso, MJ/m2, 0 to 60
   * @return 0 to 1
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 39 (the ratio Rs/Rso and its limit)
   */
  public static double clearnessFraction(double globalMjPerM2, double clearSkyMjPerM2) {
    WeatherBounds.RADIATION.checked(globalMjPerM2);
    WeatherBounds.RADIATION.checked(clearSkyMjPerM2);
    return clearSkyMjPerM2 == 0 ? SUNLESS_RATIO : Math.min(1, globalMjPerM2 / clearSkyMjPerM2);
  }

  /**
   * Net shortwave radiation of the reference grass, MJ/m2: Rns = (1 - 0.23) Rs.
   *
   * @param globalMjPerM2 Rs, MJ/m2, 0 to 60
   * @throws IllegalArgumentException outside the range
   * @source fao56, eq. 38
   */
  public static double netShortwaveMjPerM2(double globalMjPerM2) {
    return (1 - ALBEDO) * WeatherBounds.RADIATION.checked(globalMjPerM2);
  }

  /**
   * Net outgoing longwave radiation, MJ/m2: Rnl = σ (Tmax,K⁴ + Tmin,K⁴)/2 (0.34 - 0.14 √ea) (1.35
   * Rs/Rso - 0.35).
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param vapourPressureKPa ea, kPa, 0 to 25
   * @param clearnessFraction Rs/Rso, 0 to 1
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 39
   */
  public static double netLongwaveMjPerM2(
      double minimumC, double maximumC, double vapourPressureKPa, double clearnessFraction) {
    WeatherBounds.temperatures(minimumC, maximumC);
    WeatherBounds.VAPOUR_PRESSURE.checked(vapourPressureKPa);
    WeatherBounds.FRACTION.checked(clearnessFraction);
    double meanFourthPowerK4 =
        (Math.pow(maximumC + KELVIN_OFFSET, 4) + Math.pow(minimumC + KELVIN_OFFSET, 4)) / 2;
    return STEFAN_BOLTZMANN_MJ_PER_M2_K4
        * meanFourthPowerK4
        * (0.34 - 0.14 * Math.sqrt(vapourPressureKPa))
        * (1.35 * clearnessFraction - 0.35);
  }

  private static double yearAngleRad(int dayOfYear) {
    return 2 * Math.PI * WeatherBounds.DAY_OF_YEAR.checked(dayOfYear) / 365;
  }

  private static double latitudeRad(double latitudeDeg) {
    return Math.toRadians(WeatherBounds.LATITUDE.checked(latitudeDeg));
  }
}
