/** The round of a book: what its sheets add up to, and the call for each lawn. */
@NullMarked
package leafturn.records.round;

import org.jspecify.annotations.NullMarked;
