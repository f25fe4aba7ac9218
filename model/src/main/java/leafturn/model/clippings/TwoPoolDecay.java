package leafturn.model.clippings;

import leafturn.model.Bounds;
import leafturn.quantity.Range;

/**
 * Breakdown of clippings as two pools that each decay exponentially, over days reckoned at 20 °C
 * and moist: a warm wet day counts for more than one, a cold or dry one for less.
 */
public final class TwoPoolDecay {
  private static final Range FRACTION = new Range("fraction", 0, 1, "");
  private static final Range LOSS = new Range("loss fraction", 0, Math.nextDown(1.0), "");
  private static final Range DIFFERENCE = new Range("lignin", -1, 1, "g/g");
  private static final Range RATE = new Range("decay rate", 0, 10, "1/d");
  private static final Range DAYS = new Range("days", 0, 100_000, "d");

  private TwoPoolDecay() {}

  /**
   * Fast and slow pool of one kind of litter.
   *
   * @param fastFraction Fm, share of the fresh mass in the fast pool, 0 to 1
   * @param fastRatePerDay km at 20 °C and moist, 1/d, 0 to 10
   * @param slowRatePerDay ks at 20 °C and moist, 1/d, 0 to 10
   */
  public record Litter(double fastFraction, double fastRatePerDay, double slowRatePerDay) {
    public Litter {
      FRACTION.checked(fastFraction);
      RATE.checked(fastRatePerDay);
      RATE.checked(slowRatePerDay);
    }
  }

  /**
   * Share of the fresh mass that is left: Fm exp(-km τ) + (1 - Fm) exp(-ks τ).
   *
   * @param litter the two pools
   * @param referenceDays τ, sum of temperature times water factor over the days, 0 or more
   * @return 1 falling to 0
   * @throws IllegalArgumentException when τ is outside the range or NaN
   * @source parton1987, metabolic and structural litter; rates are parameters
   */
  public static double remainingFraction(Litter litter, double referenceDays) {
    DAYS.checked(referenceDays);
    return litter.fastFraction() * Math.exp(-litter.fastRatePerDay() * referenceDays)
        + (1 - litter.fastFraction()) * Math.exp(-litter.slowRatePerDay() * referenceDays);
  }

  /**
   * Rate of a single exponential that loses a share in a time, 1/d: k = -ln(1 - loss)/days.
   *
   * @param lostFraction share lost, 0 to below 1
   * @param days time, d, above 0
   * @throws IllegalArgumentException outside the ranges or NaN
   * @source definition
   */
  public static double singleRatePerDay(double lostFraction, double days) {
    LOSS.checked(lostFraction);
    if (DAYS.checked(days) == 0) {
      throw new IllegalArgumentException("a decay rate needs more than 0 days");
    }
    return -Math.log1p(-lostFraction) / days;
  }

  /**
   * Time in which a single exponential halves, d: ln 2 / k.
   *
   * @param ratePerDay k, 1/d, 0 to 10; at 0 the half-life is infinite
   * @throws IllegalArgumentException outside the range or NaN
   * @source definition
   */
  public static double halfLifeDays(double ratePerDay) {
    return Math.log(2) / RATE.checked(ratePerDay);
  }

  /**
   * Share of fresh litter in the fast pool by its lignin: Fm = 0.85 - 0.018 lignin/N, held to 0 to
   * 0.85.
   *
   * @param ligninFraction lignin, g/g dry matter, 0 to 1
   * @param nitrogenFraction N, g/g dry matter, above 0 to 1
   * @throws IllegalArgumentException outside the ranges or NaN
   * @source parton1987, from memory
   */
  public static double fastFraction(double ligninFraction, double nitrogenFraction) {
    FRACTION.checked(ligninFraction);
    if (FRACTION.checked(nitrogenFraction) == 0) {
      throw new IllegalArgumentException("litter without nitrogen has no lignin to nitrogen ratio");
    }
    return Math.max(0, 0.85 - 0.018 * ligninFraction / nitrogenFraction);
  }

  /**
   * How much slower lignin makes the slow pool decay: exp(-3 Ls).
   *
   * @param ligninDifference Ls, lignin in the slow pool, g/g; or Ls less the lignin of litter whose
   *     rate is known, -1 to 1
   * @return above 0; 1 without lignin, or at the known litter's lignin
   * @throws IllegalArgumentException outside the range or NaN
   * @source parton1987, structural litter, from memory
   */
  public static double ligninFactor(double ligninDifference) {
    return Math.exp(-3 * DIFFERENCE.checked(ligninDifference));
  }

  /**
   * Mean time a gram of litter lasts at 20 °C and moist, d: Fm/km + (1 - Fm)/ks.
   *
   * @param fastFraction Fm, 0 to 1
   * @param fastRatePerDay km, 1/d, above 0
   * @param slowRatePerDay ks, 1/d, above 0
   * @source definition
   */
  public static double meanLifeDays(
      double fastFraction, double fastRatePerDay, double slowRatePerDay) {
    return FRACTION.checked(fastFraction) / fastRatePerDay + (1 - fastFraction) / slowRatePerDay;
  }

  /**
   * Share in the fast pool at which litter of given rates has a given mean life: the inverse of
   * {@link #meanLifeDays}, held to 0 to 1.
   *
   * @param meanLifeDays d, at 20 °C and moist
   * @param fastRatePerDay km, 1/d, above ks
   * @param slowRatePerDay ks, 1/d, above 0
   * @source definition
   */
  public static double fastFractionOfMeanLife(
      double meanLifeDays, double fastRatePerDay, double slowRatePerDay) {
    double slowLife = 1 / slowRatePerDay;
    return Bounds.fraction((slowLife - meanLifeDays) / (slowLife - 1 / fastRatePerDay));
  }
}
