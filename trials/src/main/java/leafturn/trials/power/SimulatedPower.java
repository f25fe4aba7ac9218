package leafturn.trials.power;

import leafturn.trials.analysis.numeric.Tails;
import org.jspecify.annotations.Nullable;

/**
 * What simulated trials found.
 *
 * @param trials simulated
 * @param notAnalysed trials whose analysis failed; they count as having shown nothing
 * @param found share in which the difference was found; null without one to find
 * @param equivalent share in which equivalence was shown; null where none was asked, or the
 *     analysis compares no means
 */
public record SimulatedPower(
    int trials, int notAnalysed, @Nullable Share found, @Nullable Share equivalent) {

  /**
   * A share of the trials and how far chance may have moved it.
   *
   * @param share of the trials
   * @param error its Monte Carlo standard error
   * @param low lower end of its 95 % interval
   * @param high upper end
   */
  public record Share(double share, double error, double low, double high) {
    /**
     * A share with the interval of Wilson.
     *
     * @source wilson1927
     */
    static Share of(long count, int trials) {
      double share = (double) count / trials;
      double z = Tails.tQuantileTwoSided(0.05, Double.POSITIVE_INFINITY);
      double centre = (share + z * z / (2 * trials)) / (1 + z * z / trials);
      double variance = share * (1 - share) / trials;
      double reach =
          z * Math.sqrt(variance + z * z / (4.0 * trials * trials)) / (1 + z * z / trials);
      return new Share(
          share, Math.sqrt(variance), Math.max(0, centre - reach), Math.min(1, centre + reach));
    }
  }
}
