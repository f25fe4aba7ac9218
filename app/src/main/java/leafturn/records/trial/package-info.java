/** Trials as files describe them: data and model. */
@NullMarked
package leafturn.records.trial;

import org.jspecify.annotations.NullMarked;
