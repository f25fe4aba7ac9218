/** What is told of trials: size, layout, findings, on a page, in files and on paper. */
@NullMarked
package leafturn.reports.trial;

import org.jspecify.annotations.NullMarked;
