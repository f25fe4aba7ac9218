/**
 * Analysis of trial results: {@link leafturn.trials.analysis.TrialAnalysis} goes from a table and a
 * model to tests and comparisons, through the packages below in the order data, fixed, mixed,
 * inference, multiplicity.
 */
@NullMarked
package leafturn.trials.analysis;

import org.jspecify.annotations.NullMarked;
