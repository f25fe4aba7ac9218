package leafturn.advice.call;

import leafturn.model.lawn.Lawn;

/**
 * What a second pass of the mower does to clippings: it chops and spreads what the first one left.
 *
 * @param ground whose mower may go over the lawn twice at each mowing
 * @param known the deck
 * @param rules what a second pass leaves
 */
record Passes(Lawn.Ground ground, Known known, CallRules rules) {

  /** True where each mowing goes over the lawn twice. */
  boolean always() {
    Lawn.Mower mower = ground.mower();
    return mower != null && mower.doubleCut();
  }

  /** True where a plan goes over the lawn twice on one day. */
  boolean second(Plan plan) {
    return always() || plan.choice() == Choice.DOUBLE_PASS;
  }

  private double factor(boolean second) {
    return second || always() ? rules.threshold(CallRule.SECOND_PASS_FACTOR) : 1;
  }

  /** Load where clippings lie thickest over their mean. */
  double thickest(boolean second) {
    return 1 + factor(second) * (known.deckFactor() - 1);
  }

  /** Length of the pieces of leaf that was cut off at some length, mm. */
  double pieceMm(double lengthMm, boolean second) {
    return factor(second) * lengthMm;
  }
}
