@NullMarked
package leafturn.trials.analysis.ordinal;

import org.jspecify.annotations.NullMarked;
