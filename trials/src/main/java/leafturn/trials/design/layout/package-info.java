/** Which plot gets which treatment, by chance from a recorded seed. */
@NullMarked
package leafturn.trials.design.layout;

import org.jspecify.annotations.NullMarked;
