@NullMarked
package leafturn.trials.design.ground;

import org.jspecify.annotations.NullMarked;
