/** Observations that lie apart: shown, never deleted. */
@NullMarked
package leafturn.trials.analysis.diagnostics;

import org.jspecify.annotations.NullMarked;
