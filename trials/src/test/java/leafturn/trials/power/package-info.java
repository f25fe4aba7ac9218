/** Tests of sample size. */
@NullMarked
package leafturn.trials.power;

import org.jspecify.annotations.NullMarked;
