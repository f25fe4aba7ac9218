package leafturn.trials.findings;

import leafturn.trials.power.DifferenceTest;

/** What a trial of this size and spread can find. */
final class Detectable {
  private static final double POWER = 0.8;
  private static final DifferenceTest TEST =
      new DifferenceTest(Effect.ALPHA, 2, DifferenceTest.Rejections.NEAR_TAIL);

  private Detectable() {}

  /**
   * The true difference that four of five such trials would find, by the observed spread; it says
   * nothing of the difference that was observed.
   *
   * @return on the scale of the analysis, above 0
   */
  static double difference(Effect.Estimated found) {
    return shift(found.df()) * found.se();
  }

  /** The same in standard errors. */
  static double shift(double df) {
    return TEST.detectableShift(POWER, df);
  }
}
