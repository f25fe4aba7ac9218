/** The description of an analysis: what is modelled, how, and what is compared. */
@NullMarked
package leafturn.trials.analysis.model;

import org.jspecify.annotations.NullMarked;
