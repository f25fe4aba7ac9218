/** The fixed part of a model: terms, codings, design matrices and what they cannot estimate. */
@NullMarked
package leafturn.trials.analysis.fixed;

import org.jspecify.annotations.NullMarked;
