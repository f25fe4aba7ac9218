/** The model against published studies, and trials planned with the model. */
@NullMarked
package leafturn.advice.evidence;

import org.jspecify.annotations.NullMarked;
