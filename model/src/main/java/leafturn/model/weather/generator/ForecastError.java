package leafturn.model.weather.generator;

/**
 * How far a forecast is trusted, by its lead time in days, 1 for the first. Assumed throughout, for
 * want of a site's own record of forecasts: temperatures are off by about a third of what the
 * season itself varies on the first day (some 1.5 °C where it varies by 4.5) and by all of it from
 * the tenth on; from the sixth day on the forecast counts less and less against the season.
 */
final class ForecastError {
  private static final double FIRST_DAY_SHARE = 0.35;
  private static final double SHARE_PER_DAY = 0.072;
  private static final int DAYS_IN_FULL = 5;
  private static final double DAYS_OF_FADING = 12;
  private static final double CHANCE_IF_WET = 0.9;
  private static final double CHANCE_IF_DRY = 0.1;
  private static final double CHANCE_PER_DAY = 0.04;
  private static final double AMOUNT_LOG_SD = 0.4;
  private static final double AMOUNT_LOG_SD_PER_DAY = 0.05;
  private static final double HALF = 0.5;

  private ForecastError() {}

  /** Standard deviation of its temperature and wind over that of the season, 0-1. */
  static double share(int leadDays) {
    return Math.min(1, FIRST_DAY_SHARE + SHARE_PER_DAY * (leadDays - 1));
  }

  /** Weight of the forecast against the season's own expectation, 1 falling to 0. */
  static double weight(int leadDays) {
    return Math.max(0, 1 - Math.max(0, leadDays - DAYS_IN_FULL) / DAYS_OF_FADING);
  }

  /**
   * Chance of a wet day along a forecast, 0-1.
   *
   * @param season chance by the season and the day before
   */
  static double chance(WeatherForecast.Day told, double season, int leadDays) {
    double chance =
        Double.isNaN(told.rainChanceFraction())
            ? chance(RainClimate.wet(told.rainMm()), leadDays)
            : told.rainChanceFraction();
    double weight = weight(leadDays);
    return weight * chance + (1 - weight) * season;
  }

  /**
   * A season's deviation along a forecast.
   *
   * @param told what the forecast tells of it, NaN for nothing
   * @param error a deviation as the season has them
   */
  static double followed(double told, double error, int leadDays) {
    return Double.isNaN(told) ? error : weight(leadDays) * told + share(leadDays) * error;
  }

  /** Chance of a wet day where the forecast tells the amount alone, 0-1. */
  static double chance(boolean wet, int leadDays) {
    double lost = CHANCE_PER_DAY * (leadDays - 1);
    return wet ? Math.max(HALF, CHANCE_IF_WET - lost) : Math.min(HALF, CHANCE_IF_DRY + lost);
  }

  /** Factor on a forecast amount, with a mean of 1, from a normal number. */
  static double amountFactor(double normal, int leadDays) {
    double sd = AMOUNT_LOG_SD + AMOUNT_LOG_SD_PER_DAY * (leadDays - 1);
    return Math.exp(sd * normal - sd * sd / 2);
  }
}
