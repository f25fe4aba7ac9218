/** Trials on pages. */
@NullMarked
package leafturn.web.trial;

import org.jspecify.annotations.NullMarked;
