/** The book: sheets with all their versions, weather and photographs, in a database. */
@NullMarked
package leafturn.records.book;

import org.jspecify.annotations.NullMarked;
