@NullMarked
package leafturn.reports.trial;

import org.jspecify.annotations.NullMarked;
