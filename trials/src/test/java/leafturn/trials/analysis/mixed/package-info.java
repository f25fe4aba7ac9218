@NullMarked
package leafturn.trials.analysis.mixed;

import org.jspecify.annotations.NullMarked;
