/** Many comparisons at once: adjusted p values, joint distributions and letters. */
@NullMarked
package leafturn.trials.analysis.multiplicity;

import org.jspecify.annotations.NullMarked;
