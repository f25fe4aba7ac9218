package leafturn.reports.trial;

import leafturn.quantity.DisplayNumber;

/**
 * Differences to the decimals that their error bears.
 *
 * @param ratio whether they are natural logarithms and told as ratios
 */
record EffectNumbers(boolean ratio) {
  private static final int MOST_DECIMALS = 12;

  /** A difference or ratio without its unit. */
  String number(double onScale, double se) {
    if (!Double.isFinite(onScale)) {
      return "–";
    }
    double value = ratio ? Math.exp(onScale) : onScale;
    return DisplayNumber.decimals(value, decimals(ratio ? value * se : se, value));
  }

  private static int decimals(double error, double value) {
    double size = error > 0 && Double.isFinite(error) ? error : Math.abs(value) / 100;
    if (!(size > 0)) {
      return 2;
    }
    return Math.max(0, Math.min(MOST_DECIMALS, 1 - (int) Math.floor(Math.log10(size))));
  }
}
