/**
 * The daily step of one lawn: calls the other rooms in order and closes the balances of water, C,
 * N, P and K.
 */
@NullMarked
package leafturn.model.lawn;

import org.jspecify.annotations.NullMarked;
