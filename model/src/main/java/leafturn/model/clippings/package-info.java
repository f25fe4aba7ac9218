/** Clippings after the cut: breakdown, potassium wash-out, load on the turf. */
@NullMarked
package leafturn.model.clippings;

import org.jspecify.annotations.NullMarked;
