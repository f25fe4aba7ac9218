package leafturn.advice.call;

/**
 * How clippings sink out of sight between the leaves. No measurement was found: the figures are
 * judgement, and what people see on a lawn moves its own.
 *
 * @param seenGPerM2 clippings on top of the leaves that nobody sees, g dry matter/m2 where they lie
 *     thickest
 * @param perDay share rate at which short pieces sink, 1/d
 * @param shortMm length up to which pieces sink at that rate, mm; longer ones sink the slower
 * @param deckFactor load where clippings lie thickest over their mean
 * @param dryLimitGPerM2 load above which dry clippings lie in clumps and sink at half the rate
 * @param wetLimitGPerM2 the same for wet grass
 */
record Sinking(
    double seenGPerM2,
    double perDay,
    double shortMm,
    double deckFactor,
    double dryLimitGPerM2,
    double wetLimitGPerM2) {

  static Sinking of(CallRules rules) {
    return new Sinking(
        rules.threshold(CallRule.SEEN_LOAD),
        rules.threshold(CallRule.SINKING),
        rules.threshold(CallRule.SHORT_PIECES),
        rules.threshold(CallRule.DECK_FACTOR),
        rules.threshold(CallRule.CLUMP_LIMIT_DRY),
        rules.threshold(CallRule.CLUMP_LIMIT_WET));
  }

  /** The same where clippings stay in sight so many times as long. */
  Sinking slower(double times) {
    return new Sinking(
        seenGPerM2, perDay / times, shortMm, deckFactor, dryLimitGPerM2, wetLimitGPerM2);
  }

  /** The same where a second pass leaves a share of the pieces' length. */
  Sinking chopped(double lengthFraction) {
    return new Sinking(
        seenGPerM2, perDay, shortMm / lengthFraction, deckFactor, dryLimitGPerM2, wetLimitGPerM2);
  }

  /** Rate at which pieces of a length sink, 1/d. */
  double rate(double lengthMm) {
    return perDay * (lengthMm > shortMm ? shortMm / lengthMm : 1);
  }

  double limitGPerM2(boolean wet) {
    return wet ? wetLimitGPerM2 : dryLimitGPerM2;
  }
}
