package leafturn.trials.analysis.fixed;

import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * A combination of levels and covariates, observed or imagined.
 *
 * @param level the level of a factor, from 0
 * @param value the value of a covariate
 */
public record Cell(ToIntFunction<String> level, ToDoubleFunction<String> value) {}
