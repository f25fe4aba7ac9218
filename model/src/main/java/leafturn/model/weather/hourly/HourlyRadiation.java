package leafturn.model.weather.hourly;

import leafturn.model.weather.Radiation;

/** Sun and sky by the hour, MJ/m2. */
public final class HourlyRadiation {
  private static final double SOLAR_CONSTANT_MJ_PER_M2_MIN = 0.0820;
  private static final double STEFAN_BOLTZMANN_MJ_PER_M2_K4_HOUR = 4.903e-9 / 24;
  private static final double KELVIN_OFFSET = 273.16;

  private HourlyRadiation() {}

  /**
   * Radiation at the top of the air between two hours of one day, MJ/m2: (720/π) 0.0820 dr ((ω2 -
   * ω1) sin φ sin δ + cos φ cos δ (sin ω2 - sin ω1)), ω = π (t - 12)/12 held between sunrise and
   * sunset.
   *
   * @param latitudeDeg φ, degrees north, -90 to 90
   * @param dayOfYear J, 1 to 366
   * @param fromHour solar time, h; hours beyond midnight belong to the same day and bring nothing
   *     where the sun sets
   * @param toHour solar time, h, not before {@code fromHour}
   * @return 0 by night; the 24 hours add up to the day's radiation
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 28, from memory, and 31
   */
  public static double extraterrestrialMjPerM2(
      double latitudeDeg, int dayOfYear, double fromHour, double toHour) {
    double sunset = Radiation.sunsetHourAngleRad(latitudeDeg, dayOfYear);
    double from = hourAngleRad(fromHour, sunset);
    double to = hourAngleRad(toHour, sunset);
    double latitude = Math.toRadians(latitudeDeg);
    double declination = Radiation.declinationRad(dayOfYear);
    double geometry =
        (to - from) * Math.sin(latitude) * Math.sin(declination)
            + Math.cos(latitude) * Math.cos(declination) * (Math.sin(to) - Math.sin(from));
    return 720
        / Math.PI
        * SOLAR_CONSTANT_MJ_PER_M2_MIN
        * Radiation.inverseSunDistance(dayOfYear)
        * Math.max(0, geometry);
  }

  private static double hourAngleRad(double solarHour, double sunsetRad) {
    double angle = Math.PI / 12 * (solarHour - 12);
    return Math.max(-sunsetRad, Math.min(sunsetRad, angle));
  }

  /**
   * Net outgoing longwave radiation of an hour, MJ/m2: σ/24 T⁴ (0.34 - 0.14 √ea) (1.35 Rs/Rso -
   * 0.35), with the day's clearness at all hours.
   *
   * @param airTemperatureC T, °C, -90 to 60
   * @param vapourPressureKPa ea, kPa, 0 to 25
   * @param clearnessFraction Rs/Rso of the day, 0 to 1
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 39 for an hour
   */
  public static double netLongwaveMjPerM2(
      double airTemperatureC, double vapourPressureKPa, double clearnessFraction) {
    HourBounds.TEMPERATURE.checked(airTemperatureC);
    HourBounds.VAPOUR_PRESSURE.checked(vapourPressureKPa);
    HourBounds.FRACTION.checked(clearnessFraction);
    return longwaveMj(airTemperatureC, sky(vapourPressureKPa, clearnessFraction));
  }

  /** The two factors of the sky, which stay the same through the day. */
  static double sky(double vapourPressureKPa, double clearnessFraction) {
    return (0.34 - 0.14 * Math.sqrt(vapourPressureKPa)) * (1.35 * clearnessFraction - 0.35);
  }

  static double longwaveMj(double airTemperatureC, double sky) {
    double kelvin = airTemperatureC + KELVIN_OFFSET;
    double square = kelvin * kelvin;
    return STEFAN_BOLTZMANN_MJ_PER_M2_K4_HOUR * square * square * sky;
  }
}
