/** The people of a book: who they are, what each may do, and how they are known again. */
@NullMarked
package leafturn.records.people;

import org.jspecify.annotations.NullMarked;
