@NullMarked
package leafturn.trials.analysis;

import org.jspecify.annotations.NullMarked;
