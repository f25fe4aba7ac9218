package leafturn.model.weather;

/** Water vapour in the air, by the routes of FAO-56 in their order of preference. */
public final class Humidity {
  private static final double FACTOR_KPA = 0.6108;
  private static final double SLOPE = 17.27;
  private static final double OFFSET_C = 237.3;

  private Humidity() {}

  /**
   * Saturation vapour pressure over water, kPa: e° = 0.6108 exp(17.27 T / (T + 237.3)). For a day,
   * average e° at Tmax and at Tmin; e° at the mean temperature is too low.
   *
   * @param airTemperatureC T, °C, -90 to 60
   * @return kPa, positive, rising with T
   * @throws IllegalArgumentException outside the range or NaN, naming value and range
   * @source fao56, eq. 11
   */
  public static double saturationVapourPressureKPa(double airTemperatureC) {
    WeatherBounds.AIR_TEMPERATURE.checked(airTemperatureC);
    return FACTOR_KPA * Math.exp(SLOPE * airTemperatureC / (airTemperatureC + OFFSET_C));
  }

  /**
   * Mean saturation vapour pressure of a day, kPa: es = (e°(Tmax) + e°(Tmin)) / 2.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @throws IllegalArgumentException outside the range, or Tmin above Tmax
   * @source fao56, eq. 12
   */
  public static double meanSaturationVapourPressureKPa(double minimumC, double maximumC) {
    WeatherBounds.temperatures(minimumC, maximumC);
    return (saturationVapourPressureKPa(maximumC) + saturationVapourPressureKPa(minimumC)) / 2;
  }

  /**
   * Slope of the saturation vapour pressure curve, kPa/°C: Δ = 4098 e°(T) / (T + 237.3)².
   *
   * @param airTemperatureC T, °C, -90 to 60
   * @throws IllegalArgumentException outside the range or NaN
   * @source fao56, eq. 13
   */
  public static double saturationSlopeKPaPerC(double airTemperatureC) {
    double distanceC = airTemperatureC + OFFSET_C;
    return 4098 * saturationVapourPressureKPa(airTemperatureC) / (distanceC * distanceC);
  }

  /**
   * Actual vapour pressure from the dew point, kPa: ea = e°(Tdew).
   *
   * @param dewPointC Tdew, °C, -90 to 60; Tmin may stand in for it on a site that is not arid (eq.
   *     48)
   * @throws IllegalArgumentException outside the range or NaN
   * @source fao56, eq. 14
   */
  public static double fromDewPointKPa(double dewPointC) {
    return saturationVapourPressureKPa(dewPointC);
  }

  /**
   * Actual vapour pressure from a ventilated psychrometer, kPa: ea = e°(Twet) - a P (Tdry - Twet),
   * a = 0.000662 /°C.
   *
   * @param dryBulbC Tdry, °C, -90 to 60
   * @param wetBulbC Twet, °C, at most Tdry
   * @param pressureKPa P, kPa, positive
   * @throws IllegalArgumentException when Twet is above Tdry or the pressure is not positive
   * @source fao56, eq. 15
   */
  public static double fromPsychrometerKPa(double dryBulbC, double wetBulbC, double pressureKPa) {
    WeatherBounds.temperatures(wetBulbC, dryBulbC);
    WeatherBounds.PRESSURE.checked(pressureKPa);
    return saturationVapourPressureKPa(wetBulbC) - 0.000662 * pressureKPa * (dryBulbC - wetBulbC);
  }

  /**
   * Actual vapour pressure from the day's two extremes of relative humidity, kPa: the highest
   * humidity falls on the lowest temperature and the other way round.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param humidityMaximumPercent RHmax, %, 0 to 100
   * @param humidityMinimumPercent RHmin, %, 0 to 100
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 17
   */
  public static double fromHumidityExtremesKPa(
      double minimumC,
      double maximumC,
      double humidityMaximumPercent,
      double humidityMinimumPercent) {
    WeatherBounds.temperatures(minimumC, maximumC);
    WeatherBounds.RELATIVE_HUMIDITY.checked(humidityMaximumPercent);
    WeatherBounds.RELATIVE_HUMIDITY.checked(humidityMinimumPercent);
    return (saturationVapourPressureKPa(minimumC) * humidityMaximumPercent
            + saturationVapourPressureKPa(maximumC) * humidityMinimumPercent)
        / 200;
  }

  /**
   * Actual vapour pressure from the day's highest relative humidity alone, kPa: the better choice
   * where RHmin is in doubt.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param humidityMaximumPercent RHmax, %, 0 to 100
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 18
   */
  public static double fromMaximumHumidityKPa(double minimumC, double humidityMaximumPercent) {
    WeatherBounds.RELATIVE_HUMIDITY.checked(humidityMaximumPercent);
    return saturationVapourPressureKPa(minimumC) * humidityMaximumPercent / 100;
  }

  /**
   * Actual vapour pressure from the mean relative humidity, kPa: the least reliable route.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param humidityMeanPercent RHmean, %, 0 to 100
   * @throws IllegalArgumentException outside the ranges
   * @source fao56, eq. 19
   */
  public static double fromMeanHumidityKPa(
      double minimumC, double maximumC, double humidityMeanPercent) {
    WeatherBounds.RELATIVE_HUMIDITY.checked(humidityMeanPercent);
    return humidityMeanPercent / 100 * meanSaturationVapourPressureKPa(minimumC, maximumC);
  }

  /**
   * Dew point, °C, the temperature at which the air's vapour would saturate it: the inverse of
   * equation 11, 237.3 x / (17.27 - x) with x = ln(ea / 0.6108).
   *
   * @param vapourPressureKPa ea, kPa, above 0 to 25; wholly dry air has no dew point
   * @throws IllegalArgumentException outside the range or NaN
   * @source fao56, eq. 11 solved for T
   */
  public static double dewPointC(double vapourPressureKPa) {
    if (WeatherBounds.VAPOUR_PRESSURE.checked(vapourPressureKPa) == 0) {
      throw new IllegalArgumentException("air without vapour has no dew point");
    }
    double logRatio = Math.log(vapourPressureKPa / FACTOR_KPA);
    return OFFSET_C * logRatio / (SLOPE - logRatio);
  }
}
