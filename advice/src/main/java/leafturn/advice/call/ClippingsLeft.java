package leafturn.advice.call;

import leafturn.model.Parameters;

/**
 * What is left of the clippings of one choice: a fast and a slow pool that decay as in the daily
 * step, apart from the lawn's other clippings. Their way into thatch is not counted as breakdown.
 */
final class ClippingsLeft {
  private static final double HALF = 0.5;
  private static final double TENTH = 0.1;

  private final double fastRatePerDay;
  private final double slowRatePerDay;
  private double fast;
  private double slow;
  private double fallen;
  private int days;
  private int daysToHalf = -1;
  private int daysToNineTenths = -1;

  /**
   * @param parameters km, ks
   */
  ClippingsLeft(Parameters parameters) {
    this.fastRatePerDay = parameters.get("km");
    this.slowRatePerDay = parameters.get("ks");
  }

  /**
   * Clippings fall.
   *
   * @param mass in any unit
   * @param fastFraction share of them in the fast pool, 0-1
   */
  void fall(double mass, double fastFraction) {
    fast += fastFraction * mass;
    slow += (1 - fastFraction) * mass;
    fallen += mass;
  }

  /**
   * One day of decay.
   *
   * @param referenceDays temperature times moisture factor of the day
   * @param scale share of decay that mineral N allows, 0-1
   */
  void decay(double referenceDays, double scale) {
    if (fallen == 0) {
      return;
    }
    days++;
    fast -= fast * scale * -Math.expm1(-fastRatePerDay * referenceDays);
    slow -= slow * scale * -Math.expm1(-slowRatePerDay * referenceDays);
    if (daysToHalf < 0 && leftFraction() <= HALF) {
      daysToHalf = days;
    }
    if (daysToNineTenths < 0 && leftFraction() <= TENTH) {
      daysToNineTenths = days;
    }
  }

  /** Share of all that fell that has not broken down, 1 falling to 0. */
  double leftFraction() {
    return (fast + slow) / fallen;
  }

  /** Days from the first fall to the evening on which half has broken down, or -1 not yet. */
  int daysToHalf() {
    return daysToHalf;
  }

  /** Days from the first fall to the evening on which nine tenths have broken down, or -1. */
  int daysToNineTenths() {
    return daysToNineTenths;
  }
}
