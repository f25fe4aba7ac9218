/** Ordered classes by a cumulative logit. */
@NullMarked
package leafturn.trials.analysis.ordinal;

import org.jspecify.annotations.NullMarked;
