/** A season's plan as people and programs read it. */
@NullMarked
package leafturn.reports.plan;

import org.jspecify.annotations.NullMarked;
