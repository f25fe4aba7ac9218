package leafturn.advice.call;

import java.time.LocalDate;
import leafturn.quantity.Units;

/**
 * What is asked of a call.
 *
 * @param on the day it is for
 * @param rules the rules to make it by, perhaps with a person's own thresholds
 * @param units the units of its sentences
 * @param circumstances what people know that the model does not
 */
public record Asked(LocalDate on, CallRules rules, Units units, Circumstances circumstances) {
  /** Asked by someone who knows nothing beyond model and log. */
  public Asked(LocalDate on, CallRules rules, Units units) {
    this(on, rules, units, Circumstances.NONE);
  }

  Asked with(CallRules otherRules) {
    return new Asked(on, otherRules, units, circumstances);
  }
}
