package leafturn.advice.call;

/**
 * Clippings of one choice that still lie on top of the leaves, where they lie thickest. They sink
 * and decay; clumps sink at half the rate until they have come apart.
 */
final class InSight {
  private static final double IN_CLUMPS = 0.5;

  private final Sinking sinking;
  private double onTopG;
  private double ratePerDay;
  private double limitG;
  private int days;
  private int daysToUnseen = -1;

  InSight(Sinking sinking) {
    this.sinking = sinking;
  }

  /**
   * Clippings fall; with those already there they sink at the mean of their rates.
   *
   * @param dryGPerM2 returned on purpose, mean over the lawn
   * @param lengthMm length of the pieces
   * @param wet true when the grass was wet
   */
  void fall(double dryGPerM2, double lengthMm, boolean wet) {
    double local = sinking.deckFactor() * dryGPerM2;
    double all = onTopG + local;
    if (all > 0) {
      ratePerDay = (onTopG * ratePerDay + local * sinking.rate(lengthMm)) / all;
    }
    onTopG = all;
    limitG = sinking.limitGPerM2(wet);
    daysToUnseen = onTopG > sinking.seenGPerM2() ? -1 : Math.max(daysToUnseen, days);
  }

  /**
   * One day.
   *
   * @param keptFraction share of the clippings that did not decay on the day, 0-1
   */
  void day(double keptFraction) {
    days++;
    double rate = onTopG > limitG ? IN_CLUMPS * ratePerDay : ratePerDay;
    onTopG *= keptFraction * Math.exp(-rate);
    if (daysToUnseen < 0 && onTopG <= sinking.seenGPerM2()) {
      daysToUnseen = days;
    }
  }

  /** Days from the first fall until nothing is seen any more, or -1 while something is. */
  int daysToUnseen() {
    return daysToUnseen;
  }

  /** Days still needed from now on if nothing decayed any more; 0 when unseen. */
  double daysToGo() {
    return onTopG <= sinking.seenGPerM2()
        ? 0
        : Math.log(onTopG / sinking.seenGPerM2()) / ratePerDay;
  }
}
