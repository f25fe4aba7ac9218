/** Compost heaps. The door is here; the room comes with compost planning. */
@NullMarked
package leafturn.model.heap;

import org.jspecify.annotations.NullMarked;
