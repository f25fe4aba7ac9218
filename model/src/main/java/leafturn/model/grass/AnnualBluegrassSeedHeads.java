package leafturn.model.grass;

import leafturn.quantity.Range;

/**
 * Flowering of annual bluegrass by warmth. Fitted on a Michigan fairway mown at 15 mm (2001-06, R²
 * 0.64); the day from which warmth is summed was not given, so 1 January is our judgement.
 */
public final class AnnualBluegrassSeedHeads {
  /** Temperature above which a day adds warmth, °C. */
  public static final double BASE_C = -5;

  private static final Range MEAN_TEMPERATURE = new Range("mean air temperature", -90, 60, "°C");
  private static final double QUADRATIC = -3.331599e-6;
  private static final double LINEAR = 6.968782e-3;
  private static final double CONSTANT = -2.841894;

  private AnnualBluegrassSeedHeads() {}

  /**
   * Warmth of a day, °C d: max(0, T + 5).
   *
   * @param meanC mean air temperature of the day, °C, -90 to 60
   * @throws IllegalArgumentException outside the range or NaN
   * @source calhoun2021, base temperature
   */
  public static double degreeDaysCd(double meanC) {
    return Math.max(0, MEAN_TEMPERATURE.checked(meanC) - BASE_C);
  }

  /**
   * Flowering rate by the warmth g summed so far: -3.331599e-6 g² + 6.968782e-3 g - 2.841894, held
   * to 0 outside its roots. Only its shape over time is meant; it peaks at 0.80.
   *
   * @param degreeDaysCd g, sum of {@link #degreeDaysCd} since the start, °C d, 0 or more
   * @return 0 to 0.81
   * @throws IllegalArgumentException when negative or NaN
   * @source calhoun2021, flowering rate
   */
  public static double floweringRate(double degreeDaysCd) {
    if (!(degreeDaysCd >= 0)) {
      throw new IllegalArgumentException(
          "degree-days are %s °C d, but must be 0 or more".formatted(degreeDaysCd));
    }
    return Math.max(0, (QUADRATIC * degreeDaysCd + LINEAR) * degreeDaysCd + CONSTANT);
  }

  /**
   * Warmth at which flowering starts, °C d: the lower root of the rate, about 555.
   *
   * @source calhoun2021, flowering rate solved for 0
   */
  public static double onsetCd() {
    return peakCd() - halfWidthCd();
  }

  /**
   * Warmth at which flowering is strongest, °C d: about 1046.
   *
   * @source calhoun2021, flowering rate differentiated
   */
  public static double peakCd() {
    return -LINEAR / (2 * QUADRATIC);
  }

  /**
   * Warmth at which flowering ends, °C d: the upper root of the rate, about 1537.
   *
   * @source calhoun2021, flowering rate solved for 0
   */
  public static double endCd() {
    return peakCd() + halfWidthCd();
  }

  private static double halfWidthCd() {
    return Math.sqrt(LINEAR * LINEAR - 4 * QUADRATIC * CONSTANT) / (-2 * QUADRATIC);
  }
}
