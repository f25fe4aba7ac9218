/** Sample size: power, detectable differences, equivalence; by formula and by simulated trials. */
@NullMarked
package leafturn.trials.power;

import org.jspecify.annotations.NullMarked;
