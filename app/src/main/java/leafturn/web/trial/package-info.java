/** Forms and words of the pages of trials. */
@NullMarked
package leafturn.web.trial;

import org.jspecify.annotations.NullMarked;
