/** What a fitted model says: degrees of freedom, tests, means and contrasts. */
@NullMarked
package leafturn.trials.analysis.inference;

import org.jspecify.annotations.NullMarked;
