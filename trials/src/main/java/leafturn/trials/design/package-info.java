/** A trial as it is planned: question, treatments, places, dates and rules, fixed beforehand. */
@NullMarked
package leafturn.trials.design;

import org.jspecify.annotations.NullMarked;
