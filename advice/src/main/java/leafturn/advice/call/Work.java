package leafturn.advice.call;

import leafturn.model.lawn.Lawn;
import org.jspecify.annotations.Nullable;

/**
 * Fresh mass, volume, bags and minutes of a cut, as far as the lawn's description tells.
 *
 * @param ground area and mower
 * @param rules figures for water, volume, overlap and bags
 */
record Work(Lawn.Ground ground, CallRules rules) {
  private static final double M_PER_KM = 1000;
  private static final double MM_PER_M = 1000;
  private static final double MINUTES_PER_HOUR = 60;

  @Nullable Spread dryKg(Spread dryGPerM2) {
    return ground.areaM2() == null ? null : dryGPerM2.times(ground.areaM2() / 1000);
  }

  @Nullable Spread freshKg(Spread dryGPerM2) {
    Spread dryKg = dryKg(dryGPerM2);
    return dryKg == null ? null : dryKg.times(1 / rules.threshold(CallRule.DRY_SHARE_OF_FRESH));
  }

  @Nullable Spread litres(Spread dryGPerM2) {
    Spread dryKg = dryKg(dryGPerM2);
    return dryKg == null ? null : dryKg.times(1000 / rules.threshold(CallRule.DRY_G_PER_LITRE));
  }

  /** Bags that collecting fills. */
  @Nullable Spread bags(Spread dryGPerM2) {
    Spread litres = litres(dryGPerM2);
    Lawn.Mower mower = ground.mower();
    return litres == null || mower == null || mower.bagLitres() == null
        ? null
        : litres.times(1 / mower.bagLitres());
  }

  /**
   * Minutes behind the mower and at the heap, without getting it out and away.
   *
   * @param cuts number of cuts, 1 or more
   * @param bags bags to empty, or null when not known or nothing is collected
   */
  @Nullable Spread minutes(int cuts, @Nullable Spread bags) {
    Lawn.Mower mower = ground.mower();
    if (ground.areaM2() == null
        || mower == null
        || mower.deckWidthMm() == null
        || mower.speedKmPerH() == null) {
      return null;
    }
    double widthM = rules.threshold(CallRule.PASS_OVERLAP) * mower.deckWidthMm() / MM_PER_M;
    double mPerMinute = mower.speedKmPerH() * M_PER_KM / MINUTES_PER_HOUR;
    double passes = cuts * (mower.doubleCut() ? 2 : 1);
    double mowing = passes * ground.areaM2() / (widthM * mPerMinute);
    double perBag = rules.threshold(CallRule.BAG_MINUTES);
    return bags == null
        ? Spread.exactly(mowing)
        : new Spread(
            mowing + perBag * bags.low(),
            mowing + perBag * bags.middle(),
            mowing + perBag * bags.high());
  }
}
