@NullMarked
package leafturn.trials.analysis.paired;

import org.jspecify.annotations.NullMarked;
