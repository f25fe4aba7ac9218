/** The split yard as paired differences, without a model. */
@NullMarked
package leafturn.trials.analysis.paired;

import org.jspecify.annotations.NullMarked;
