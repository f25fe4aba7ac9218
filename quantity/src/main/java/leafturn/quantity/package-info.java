/**
 * Units, conversion, ranges, rounding for display, and small data tables. SI inside; other units
 * only at the edge.
 */
@NullMarked
package leafturn.quantity;

import org.jspecify.annotations.NullMarked;
