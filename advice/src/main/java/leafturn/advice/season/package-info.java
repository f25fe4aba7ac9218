/** Seasons: the daily model over a weather record, and its account by year. */
@NullMarked
package leafturn.advice.season;

import org.jspecify.annotations.NullMarked;
