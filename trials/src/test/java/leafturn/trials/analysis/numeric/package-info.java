@NullMarked
package leafturn.trials.analysis.numeric;

import org.jspecify.annotations.NullMarked;
