/** Readings of a trial, and what can be wrong with them before anything is concluded. */
@NullMarked
package leafturn.trials.observation;

import org.jspecify.annotations.NullMarked;
