package leafturn.model.grass;

/**
 * How likely seed heads of annual bluegrass stand on a date where it grows: by warmth in spring, by
 * the calendar in the cool autumns of maritime places. A look at the lawn outweighs both.
 */
public final class SeedHeadWindow {
  /**
   * How far the warmth of flowering may differ from the fairway it was fitted on (our judgement).
   */
  public static final double WARMTH_SPREAD_FRACTION = 0.15;

  private static final int STEPS = 7;
  private static final int MONTHS = 12;
  private static final double COLDEST_MONTH_C = 0;
  private static final double WARMEST_MONTH_C = 22;
  private static final double MILD_MONTH_C = 10;
  private static final int MILD_MONTHS = 4;
  private static final double AUTUMN_START = 258;
  private static final double AUTUMN_PEAK = 288;
  private static final double AUTUMN_END = 319;
  private static final double YEAR_DAYS = 365;

  private SeedHeadWindow() {}

  /**
   * Likelihood in spring: the flowering rate over its peak, averaged over a spread of the warmth at
   * which this lawn flowers.
   *
   * @param degreeDaysCd warmth summed since the start of the year, °C d, 0 or more
   * @param spreadFraction half the width of the spread, 0 to 0.5
   * @return 0 to 1; a judgement scaled from a rate, not a measured frequency
   * @throws IllegalArgumentException outside the ranges
   * @source calhoun2021, flowering rate; its reading as a likelihood is our judgement
   */
  public static double springFraction(double degreeDaysCd, double spreadFraction) {
    if (!(spreadFraction >= 0 && spreadFraction <= 0.5 && degreeDaysCd >= 0)) {
      throw new IllegalArgumentException(
          "warmth of %s °C d (0 or more) with a spread of %s (0 to 0.5) gives no likelihood"
              .formatted(degreeDaysCd, spreadFraction));
    }
    double peak = AnnualBluegrassSeedHeads.floweringRate(AnnualBluegrassSeedHeads.peakCd());
    double sum = 0;
    for (int step = 0; step < STEPS; step++) {
      double warmer = 1 + spreadFraction * (2.0 * step / (STEPS - 1) - 1);
      sum += AnnualBluegrassSeedHeads.floweringRate(degreeDaysCd * warmer) / peak;
    }
    return sum / STEPS;
  }

  /**
   * Shape of the second, smaller flush of cool maritime autumns: a triangle from mid-September to
   * mid-November, half a year later in the south.
   *
   * @param dayOfYear 1 to 366
   * @param southern true south of the equator
   * @return 0 to 1
   * @throws IllegalArgumentException outside the range
   * @source common practice, no source
   */
  public static double autumnFraction(int dayOfYear, boolean southern) {
    if (dayOfYear < 1 || dayOfYear > YEAR_DAYS + 1) {
      throw new IllegalArgumentException(
          "the day of the year is %s, but must lie from 1 to 366".formatted(dayOfYear));
    }
    double day = southern ? (dayOfYear + YEAR_DAYS / 2) % YEAR_DAYS : dayOfYear;
    double rise = (day - AUTUMN_START) / (AUTUMN_PEAK - AUTUMN_START);
    double fall = (AUTUMN_END - day) / (AUTUMN_END - AUTUMN_PEAK);
    return Math.max(0, Math.min(rise, fall));
  }

  /**
   * True where autumns count as cool and maritime: coldest month above 0 °C, warmest below 22 °C,
   * at least four months of 10 °C or more, the limits of Köppen's oceanic climates. That these are
   * the places of the autumn flush is our judgement.
   *
   * @param monthlyMeanC mean air temperature of the twelve months, °C
   * @throws IllegalArgumentException for another number of months
   */
  public static boolean coolMaritime(double[] monthlyMeanC) {
    if (monthlyMeanC.length != MONTHS) {
      throw new IllegalArgumentException(
          "a year has 12 monthly means, but got " + monthlyMeanC.length);
    }
    double coldest = Double.POSITIVE_INFINITY;
    double warmest = Double.NEGATIVE_INFINITY;
    int mild = 0;
    for (double meanC : monthlyMeanC) {
      coldest = Math.min(coldest, meanC);
      warmest = Math.max(warmest, meanC);
      mild += meanC >= MILD_MONTH_C ? 1 : 0;
    }
    return coldest > COLDEST_MONTH_C && warmest < WARMEST_MONTH_C && mild >= MILD_MONTHS;
  }
}
