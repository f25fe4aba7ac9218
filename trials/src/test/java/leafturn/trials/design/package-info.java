@NullMarked
package leafturn.trials.design;

import org.jspecify.annotations.NullMarked;
