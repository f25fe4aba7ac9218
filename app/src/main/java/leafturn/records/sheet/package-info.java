/** What a book keeps, kind by kind: each content is a JSON document that one reader checks. */
@NullMarked
package leafturn.records.sheet;

import org.jspecify.annotations.NullMarked;
