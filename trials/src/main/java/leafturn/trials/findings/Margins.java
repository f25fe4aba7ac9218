package leafturn.trials.findings;

import leafturn.trials.design.Outcome;

/** Margins that matter, as plans state them. */
final class Margins {
  private Margins() {}

  /**
   * The margin of an outcome on the scale of its analysis: on the log scale a plan states a ratio
   * above 1.
   *
   * @return NaN where none was fixed
   */
  static double onScale(Outcome outcome) {
    Double margin = outcome.margin();
    if (margin == null) {
      return Double.NaN;
    }
    return outcome.scale() == Outcome.Scale.LOG ? Math.log(margin) : margin;
  }
}
