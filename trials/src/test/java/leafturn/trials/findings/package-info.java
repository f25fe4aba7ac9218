@NullMarked
package leafturn.trials.findings;

import org.jspecify.annotations.NullMarked;
