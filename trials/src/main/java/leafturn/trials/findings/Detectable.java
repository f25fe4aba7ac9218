package leafturn.trials.findings;

/** What a trial of this size and spread can find. */
final class Detectable {
  private static final double POWER = 0.8;

  private Detectable() {}

  /**
   * The true difference that four of five such trials would find, by the observed spread; it says
   * nothing of the difference that was observed.
   */
  static double difference(Effect.Estimated found) {
    return Double.NaN;
  }
}
