package leafturn.advice.call;

import java.time.LocalDate;
import leafturn.quantity.Units;

/**
 * What is asked of a call.
 *
 * @param on the day it is for
 * @param rules the rules to make it by, perhaps with a person's own thresholds
 * @param units the units of its sentences
 */
public record Asked(LocalDate on, CallRules rules, Units units) {}
