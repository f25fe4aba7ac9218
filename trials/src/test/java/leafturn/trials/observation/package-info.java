@NullMarked
package leafturn.trials.observation;

import org.jspecify.annotations.NullMarked;
