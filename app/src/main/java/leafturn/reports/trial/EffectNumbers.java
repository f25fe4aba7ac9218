package leafturn.reports.trial;

import leafturn.quantity.DisplayNumber;

/**
 * Differences to the decimals that their error bears.
 *
 * @param ratio whether they are natural logarithms and told as ratios
 */
record EffectNumbers(boolean ratio) {
  private static final int MOST_DECIMALS = 12;
  private static final int FURTHER_DECIMALS = 3;

  /** A difference or ratio without its unit. */
  String number(double onScale, double se) {
    if (!Double.isFinite(onScale)) {
      return "–";
    }
    double value = ratio ? Math.exp(onScale) : onScale;
    return DisplayNumber.decimals(value, decimals(ratio ? value * se : se, value));
  }

  /**
   * An interval: "0.13 to 0.69". An end that would be rounded to no effect at all gets the decimals
   * that tell on which side of it it lies.
   */
  String interval(double lower, double upper, double se) {
    if (!Double.isFinite(lower) && !Double.isFinite(upper)) {
      return "–";
    }
    return end(lower, se) + " to " + end(upper, se);
  }

  private String end(double onScale, double se) {
    if (!Double.isFinite(onScale) || onScale == 0) {
      return number(onScale, se);
    }
    double value = ratio ? Math.exp(onScale) : onScale;
    double none = ratio ? 1 : 0;
    int places = decimals(ratio ? value * se : se, value);
    int most = Math.min(MOST_DECIMALS, places + FURTHER_DECIMALS);
    while (places < most && Math.abs(value - none) < 0.5 * Math.pow(10, -places)) {
      places++;
    }
    return DisplayNumber.decimals(value, places);
  }

  private static int decimals(double error, double value) {
    double size = error > 0 && Double.isFinite(error) ? error : Math.abs(value) / 100;
    if (!(size > 0)) {
      return 2;
    }
    return Math.max(0, Math.min(MOST_DECIMALS, 1 - (int) Math.floor(Math.log10(size))));
  }
}
