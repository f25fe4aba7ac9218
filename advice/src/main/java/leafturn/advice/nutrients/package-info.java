/** The nutrient account and feed plan. The door is here; the room comes with the ledger. */
@NullMarked
package leafturn.advice.nutrients;

import org.jspecify.annotations.NullMarked;
