/**
 * Where collected clippings go. The door is here; the room comes with compost and mulch planning.
 */
@NullMarked
package leafturn.advice.destinations;

import org.jspecify.annotations.NullMarked;
