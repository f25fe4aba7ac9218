/** Water in the root zone: runoff, irrigation programme, depletion, drainage. */
@NullMarked
package leafturn.model.water;

import org.jspecify.annotations.NullMarked;
