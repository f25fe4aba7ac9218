/** The data of a trial as its model sees them: columns, levels, missing and censored values. */
@NullMarked
package leafturn.trials.analysis.data;

import org.jspecify.annotations.NullMarked;
