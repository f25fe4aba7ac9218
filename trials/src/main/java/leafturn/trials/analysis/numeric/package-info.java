/** Small dense algebra, tails of distributions and the minimiser that the analysis shares. */
@NullMarked
package leafturn.trials.analysis.numeric;

import org.jspecify.annotations.NullMarked;
