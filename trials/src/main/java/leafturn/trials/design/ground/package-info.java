/** Plots on the real shape of a lawn: halves, strips, corners to measure, places of cores. */
@NullMarked
package leafturn.trials.design.ground;

import org.jspecify.annotations.NullMarked;
