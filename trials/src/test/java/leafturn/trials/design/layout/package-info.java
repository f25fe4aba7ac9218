@NullMarked
package leafturn.trials.design.layout;

import org.jspecify.annotations.NullMarked;
