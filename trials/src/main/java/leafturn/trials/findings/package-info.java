/**
 * From what was planned and what was read to what may be said: effects, verdicts and their reach.
 */
@NullMarked
package leafturn.trials.findings;

import org.jspecify.annotations.NullMarked;
