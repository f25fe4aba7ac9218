/** The call for a mowing: what to do, when and why, with the computed outcome of each option. */
@NullMarked
package leafturn.advice.call;

import org.jspecify.annotations.NullMarked;
