/** Trial layouts drawn from a seed. The door is here; the room comes with the trials. */
@NullMarked
package leafturn.trials.design;

import org.jspecify.annotations.NullMarked;
