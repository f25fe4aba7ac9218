@NullMarked
package leafturn.trials.analysis.multiplicity;

import org.jspecify.annotations.NullMarked;
