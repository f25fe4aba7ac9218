package leafturn.model.water;

import leafturn.quantity.Range;

/**
 * Runoff of a day's rain by the SCS curve number: the lower the number, the more rain the ground
 * takes before any runs off. A method for storms and days, not for hourly showers.
 */
public final class CurveNumberRunoff {
  private static final Range CURVE_NUMBER = new Range("curve number", 1, 100, "");
  private static final double ABSTRACTED_SHARE = 0.2;

  private CurveNumberRunoff() {}

  /**
   * Greatest retention of the ground, mm: S = 25400/CN - 254.
   *
   * @param curveNumber CN, 1 to 100; 100 sheds everything
   * @return 0 or more
   * @throws IllegalArgumentException outside the range or NaN
   * @source tr55, eq. 2-4
   */
  public static double retentionMm(double curveNumber) {
    return 25400 / CURVE_NUMBER.checked(curveNumber) - 254;
  }

  /**
   * Runoff of a day, mm: Q = (P - Ia)²/(P + 0.8 S) when P is above Ia = 0.2 S, otherwise 0.
   *
   * @param rainMm P, mm, 0 or more
   * @param retentionMm S of {@link #retentionMm}, mm, 0 or more
   * @return 0 to P
   * @throws IllegalArgumentException when either is negative or NaN
   * @source tr55, eq. 2-1 to 2-3
   */
  public static double runoffMm(double rainMm, double retentionMm) {
    if (!(rainMm >= 0 && retentionMm >= 0)) {
      throw new IllegalArgumentException(
          "rain is %s mm and retention %s mm, but both must be 0 or more"
              .formatted(rainMm, retentionMm));
    }
    double excessMm = rainMm - ABSTRACTED_SHARE * retentionMm;
    // Rounding must not let more run off than fell.
    return excessMm > 0 ? Math.min(rainMm, excessMm * excessMm / (excessMm + retentionMm)) : 0;
  }

  /**
   * Curve number of dry ground (moisture class I): 4.2 CN/(10 - 0.058 CN).
   *
   * @param curveNumber CN of average ground (class II), 1 to 100
   * @throws IllegalArgumentException outside the range or NaN
   * @source neh4, moisture classes, from memory
   */
  public static double dryCurveNumber(double curveNumber) {
    return 4.2 * CURVE_NUMBER.checked(curveNumber) / (10 - 0.058 * curveNumber);
  }

  /**
   * Curve number of wet ground (moisture class III): 23 CN/(10 + 0.13 CN).
   *
   * @param curveNumber CN of average ground (class II), 1 to 100
   * @throws IllegalArgumentException outside the range or NaN
   * @source neh4, moisture classes, from memory
   */
  public static double wetCurveNumber(double curveNumber) {
    return 23 * CURVE_NUMBER.checked(curveNumber) / (10 + 0.13 * curveNumber);
  }
}
