/** The grass plant: species, temperature response, turnover, uptake, growth, mowing. */
@NullMarked
package leafturn.model.grass;

import org.jspecify.annotations.NullMarked;
