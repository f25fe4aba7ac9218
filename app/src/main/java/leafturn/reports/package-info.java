/** Results as aligned text and JSON for people and programs. */
@NullMarked
package leafturn.reports;

import org.jspecify.annotations.NullMarked;
