/** One small class per question of speed; inputs are built in the set-up, answers checked first. */
@NullMarked
package leafturn.bench;

import org.jspecify.annotations.NullMarked;
