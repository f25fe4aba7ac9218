package leafturn.model.weather;

/**
 * Degree-days of one day above a lower threshold, °C d, by three curves through the day's extremes.
 * With an upper threshold the warmth above it is cut off level: DD(lower) - DD(upper).
 */
public final class DegreeDays {
  private DegreeDays() {}

  /**
   * Degree-days from the mean of the extremes: max(0, (Tmax + Tmin)/2 - L).
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param lowerC L, °C
   * @throws IllegalArgumentException outside the ranges, or Tmin above Tmax
   * @source zalom1983, averaging
   */
  public static double averageCd(double minimumC, double maximumC, double lowerC) {
    WeatherBounds.temperatures(minimumC, maximumC);
    WeatherBounds.AIR_TEMPERATURE.checked(lowerC);
    return Math.max(0, (minimumC + maximumC) / 2 - lowerC);
  }

  /**
   * Degree-days under a triangle from minimum to maximum and back: (Tmax - L)²/(2 (Tmax - Tmin))
   * when L lies between them.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param lowerC L, °C
   * @throws IllegalArgumentException outside the ranges, or Tmin above Tmax
   * @source sevacherian1977, single triangle
   */
  public static double triangleCd(double minimumC, double maximumC, double lowerC) {
    double average = averageCd(minimumC, maximumC, lowerC);
    if (lowerC <= minimumC || lowerC >= maximumC) {
      return average; // all above the threshold, or none
    }
    double above = maximumC - lowerC;
    return above * above / (2 * (maximumC - minimumC));
  }

  /**
   * Degree-days under a sine wave from minimum to maximum: ((M - L)(π/2 - θ) + W cos θ)/π, M =
   * (Tmax + Tmin)/2, W = (Tmax - Tmin)/2, θ = arcsin((L - M)/W), when L lies between the extremes.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param lowerC L, °C
   * @throws IllegalArgumentException outside the ranges, or Tmin above Tmax
   * @source baskerville1969, single sine
   */
  public static double sineCd(double minimumC, double maximumC, double lowerC) {
    double average = averageCd(minimumC, maximumC, lowerC);
    if (lowerC <= minimumC || lowerC >= maximumC) {
      return average; // all above the threshold, or none
    }
    double mean = (maximumC + minimumC) / 2;
    double swing = (maximumC - minimumC) / 2;
    double crossing = Math.asin((lowerC - mean) / swing);
    return ((mean - lowerC) * (Math.PI / 2 - crossing) + swing * Math.cos(crossing)) / Math.PI;
  }

  /**
   * Average degree-days with the warmth above an upper threshold cut off.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param lowerC L, °C
   * @param upperC U, °C, not below L
   * @throws IllegalArgumentException outside the ranges, Tmin above Tmax, or U below L
   * @source zalom1983, horizontal cut-off
   */
  public static double averageCd(double minimumC, double maximumC, double lowerC, double upperC) {
    requireOrder(lowerC, upperC);
    return averageCd(minimumC, maximumC, lowerC) - averageCd(minimumC, maximumC, upperC);
  }

  /**
   * Triangle degree-days with the warmth above an upper threshold cut off.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param lowerC L, °C
   * @param upperC U, °C, not below L
   * @throws IllegalArgumentException outside the ranges, Tmin above Tmax, or U below L
   * @source zalom1983, horizontal cut-off
   */
  public static double triangleCd(double minimumC, double maximumC, double lowerC, double upperC) {
    requireOrder(lowerC, upperC);
    return triangleCd(minimumC, maximumC, lowerC) - triangleCd(minimumC, maximumC, upperC);
  }

  /**
   * Sine degree-days with the warmth above an upper threshold cut off.
   *
   * @param minimumC Tmin, °C, -90 to 60
   * @param maximumC Tmax, °C, Tmin to 60
   * @param lowerC L, °C
   * @param upperC U, °C, not below L
   * @throws IllegalArgumentException outside the ranges, Tmin above Tmax, or U below L
   * @source zalom1983, horizontal cut-off
   */
  public static double sineCd(double minimumC, double maximumC, double lowerC, double upperC) {
    requireOrder(lowerC, upperC);
    return sineCd(minimumC, maximumC, lowerC) - sineCd(minimumC, maximumC, upperC);
  }

  private static void requireOrder(double lowerC, double upperC) {
    if (!(lowerC <= upperC)) {
      throw new IllegalArgumentException(
          "the upper threshold is %s °C, below the lower of %s °C".formatted(upperC, lowerC));
    }
  }
}
