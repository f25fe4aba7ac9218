package leafturn.model.weather.hourly;

/** Whether leaves are wet in an hour, by three published rules that need no water balance. */
public final class LeafWetness {
  /** Relative humidity from which leaves count as wet, %. */
  public static final double WET_HUMIDITY_PERCENT = 90;

  private static final double DRY_DEPRESSION_C = 3.7;
  private static final double CALM_WIND_M_PER_S = 2.5;
  private static final double WINDY_WET_HUMIDITY_PERCENT = 87.8;
  private static final double CALM_LIMIT = 14.4674;
  private static final double WINDY_LIMIT = 37.0;

  private LeafWetness() {}

  /**
   * True when the air is so moist that leaves count as wet: RH at or above a threshold.
   *
   * @param humidityPercent RH, %, 0 to 100
   * @param thresholdPercent %, 0 to 100; 90 was the best of the simple rules at four sites
   * @throws IllegalArgumentException outside the ranges
   */
  public static boolean wetByHumidity(double humidityPercent, double thresholdPercent) {
    HourBounds.HUMIDITY.checked(thresholdPercent);
    return HourBounds.HUMIDITY.checked(humidityPercent) >= thresholdPercent;
  }

  /**
   * Score of the regression tree in light wind; above 14.4674 leaves are wet: 1.6064 √T + 0.0036 T²
   * + 0.1531 RH - 0.4599 W DPD - 0.0035 T RH.
   *
   * @param temperatureC T, °C, 0 to 60
   * @param humidityPercent RH, %, 0 to 100
   * @param windMPerS W, m/s, 0 to 115
   * @param depressionC DPD, temperature less dew point, °C, 0 or more
   * @throws IllegalArgumentException outside the ranges
   * @source gleason1994, calm branch; kim2002
   */
  public static double calmScore(
      double temperatureC, double humidityPercent, double windMPerS, double depressionC) {
    checked(temperatureC, humidityPercent, windMPerS, depressionC);
    return 1.6064 * Math.sqrt(temperatureC)
        + 0.0036 * temperatureC * temperatureC
        + 0.1531 * humidityPercent
        - 0.4599 * windMPerS * depressionC
        - 0.0035 * temperatureC * humidityPercent;
  }

  /**
   * Score of the regression tree in wind; above 37 leaves are wet: 0.7921 √T + 0.0046 RH² - 2.3889
   * W - 0.0390 T W + 1.0613 W DPD. A page that prints it has RH for RH²; with that the score never
   * comes near 37, so RH² is used.
   *
   * @param temperatureC T, °C, 0 to 60
   * @param humidityPercent RH, %, 0 to 100
   * @param windMPerS W, m/s, 0 to 115
   * @param depressionC DPD, °C, 0 or more
   * @throws IllegalArgumentException outside the ranges
   * @source gleason1994, windy branch; kim2002
   */
  public static double windyScore(
      double temperatureC, double humidityPercent, double windMPerS, double depressionC) {
    checked(temperatureC, humidityPercent, windMPerS, depressionC);
    return 0.7921 * Math.sqrt(temperatureC)
        + 0.0046 * humidityPercent * humidityPercent
        - 2.3889 * windMPerS
        - 0.0390 * temperatureC * windMPerS
        + 1.0613 * windMPerS * depressionC;
  }

  /**
   * True when the regression tree calls leaves wet: dry from a depression of 3.7 °C on; else by the
   * calm score below 2.5 m/s, and by the windy score from 87.8 % on. Below 0 °C the tree has no
   * value; T is then taken as 0.
   *
   * @param temperatureC T, °C, -90 to 60
   * @param humidityPercent RH, %, 0 to 100
   * @param windMPerS W, m/s, 0 to 115
   * @param depressionC DPD, °C, 0 or more
   * @throws IllegalArgumentException outside the ranges
   */
  public static boolean wetByTree(
      double temperatureC, double humidityPercent, double windMPerS, double depressionC) {
    double warmC = Math.max(0, HourBounds.TEMPERATURE.checked(temperatureC));
    checked(warmC, humidityPercent, windMPerS, depressionC);
    if (depressionC >= DRY_DEPRESSION_C) {
      return false;
    }
    if (windMPerS < CALM_WIND_M_PER_S) {
      return calmScore(warmC, humidityPercent, windMPerS, depressionC) > CALM_LIMIT;
    }
    return humidityPercent >= WINDY_WET_HUMIDITY_PERCENT
        && windyScore(warmC, humidityPercent, windMPerS, depressionC) > WINDY_LIMIT;
  }

  private static void checked(
      double temperatureC, double humidityPercent, double windMPerS, double depressionC) {
    HourBounds.TEMPERATURE.checked(temperatureC);
    HourBounds.HUMIDITY.checked(humidityPercent);
    HourBounds.WIND.checked(windMPerS);
    if (!(temperatureC >= 0 && depressionC >= 0)) {
      throw new IllegalArgumentException(
          "the regression tree needs a temperature and a dew point depression of 0 °C or more, but has %s and %s"
              .formatted(temperatureC, depressionC));
    }
  }
}
