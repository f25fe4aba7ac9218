/** Values known only to lie below a detection limit. */
@NullMarked
package leafturn.trials.analysis.censored;

import org.jspecify.annotations.NullMarked;
