/** The linear mixed model: covariance, restricted likelihood and its fit. */
@NullMarked
package leafturn.trials.analysis.mixed;

import org.jspecify.annotations.NullMarked;
