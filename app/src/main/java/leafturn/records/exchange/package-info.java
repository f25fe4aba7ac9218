/**
 * Tables that come into the book and go out of it: past logs, properties with their lawns, and
 * daily weather. What comes in is looked at whole before anything of it is written.
 */
@NullMarked
package leafturn.records.exchange;

import org.jspecify.annotations.NullMarked;
