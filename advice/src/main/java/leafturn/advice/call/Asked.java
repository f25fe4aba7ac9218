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
 * @param seasons the possible seasons to reckon over
 */
public record Asked(
    LocalDate on, CallRules rules, Units units, Circumstances circumstances, SeasonsAsked seasons) {
  /** Asked over the usual possible seasons. */
  public Asked(LocalDate on, CallRules rules, Units units, Circumstances circumstances) {
    this(on, rules, units, circumstances, SeasonsAsked.USUAL);
  }

  /** Asked by someone who knows nothing beyond model and log. */
  public Asked(LocalDate on, CallRules rules, Units units) {
    this(on, rules, units, Circumstances.NONE);
  }

  Asked with(CallRules otherRules) {
    return new Asked(on, otherRules, units, circumstances, seasons);
  }

  /** The same, over other possible seasons. */
  public Asked over(SeasonsAsked others) {
    return new Asked(on, rules, units, circumstances, others);
  }

  Asked with(Circumstances otherCircumstances) {
    return new Asked(on, rules, units, otherCircumstances, seasons);
  }
}
