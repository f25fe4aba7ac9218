/** Keeping the book safe: the open archive, checks, backups while it is open, nightly archives. */
@NullMarked
package leafturn.records.archive;

import org.jspecify.annotations.NullMarked;
