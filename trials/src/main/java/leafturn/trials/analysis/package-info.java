/** Analysis of trial results. The door is here; the room comes with the trials. */
@NullMarked
package leafturn.trials.analysis;

import org.jspecify.annotations.NullMarked;
