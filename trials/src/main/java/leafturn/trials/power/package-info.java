/** Sample size and detectable differences. The door is here; the room comes with the trials. */
@NullMarked
package leafturn.trials.power;

import org.jspecify.annotations.NullMarked;
