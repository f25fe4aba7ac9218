package leafturn.advice.call;

import java.util.function.IntPredicate;
import leafturn.model.Parameters;
import leafturn.model.clippings.CutQuality.Stalks;
import org.jspecify.annotations.Nullable;

/**
 * What is left of the clippings of one choice: a fast and a slow pool that decay as in the daily
 * step, apart from the lawn's other clippings. Their way into thatch is not counted as breakdown.
 */
final class ClippingsLeft {
  private static final double HALF = 0.5;
  private static final double TENTH = 0.1;

  private final double fastRatePerDay;
  private final double slowRatePerDay;
  private final InSight sight;
  private final IntPredicate wetDays;
  private final @Nullable Stalks stalks;
  private double fast;
  private double slow;
  private double fallen;
  private int days;
  private int daysToHalf = -1;
  private int daysToNineTenths = -1;

  /**
   * @param parameters km, ks
   * @param sinking how they sink out of sight
   * @param wetDays whether grass is wet so many days from the day of the call
   * @param stalks seed stalks that someone saw or missed in the grass, or null
   */
  ClippingsLeft(
      Parameters parameters, Sinking sinking, IntPredicate wetDays, @Nullable Stalks stalks) {
    this.stalks = stalks;
    this.wetDays = wetDays;
    this.sight = new InSight(sinking);
    this.fastRatePerDay = parameters.get("km");
    this.slowRatePerDay = parameters.get("ks");
  }

  /**
   * Clippings fall.
   *
   * @param dryGPerM2 g dry matter/m2
   * @param fastFraction share of them in the fast pool, 0-1
   * @param lengthMm length of the pieces
   * @param day days from the day of the call
   */
  void fall(double dryGPerM2, double fastFraction, double lengthMm, int day) {
    sight.fall(dryGPerM2, lengthMm, wetDays.test(day));
    fast += fastFraction * dryGPerM2;
    slow += (1 - fastFraction) * dryGPerM2;
    fallen += dryGPerM2;
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
    double before = fast + slow;
    fast -= fast * scale * -Math.expm1(-fastRatePerDay * referenceDays);
    slow -= slow * scale * -Math.expm1(-slowRatePerDay * referenceDays);
    sight.day((fast + slow) / before);
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

  /** Seed stalks that someone saw or missed in the grass, or null. */
  @Nullable Stalks stalks() {
    return stalks;
  }

  /** Days from the first fall until nothing of them is seen any more, or -1 not yet. */
  int daysToUnseen() {
    return sight.daysToUnseen();
  }
}
