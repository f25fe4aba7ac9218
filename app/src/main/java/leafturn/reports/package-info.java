/** Results for people and programs: words, aligned text, JSON, figures and documents. */
@NullMarked
package leafturn.reports;

import org.jspecify.annotations.NullMarked;
