/**
 * Files in and out: lawn descriptions, weather, logs. Every fault of a file is reported at once.
 */
@NullMarked
package leafturn.records;

import org.jspecify.annotations.NullMarked;
