package leafturn.trials.design.layout;

import java.time.LocalDate;

/**
 * Where a core is taken.
 *
 * @param plot code of the plot
 * @param date on which
 * @param number from 1, in the plot and on the date
 * @param bag from 1, into which it goes
 * @param xM m to the east on the lawn's grid, to the centimetre
 * @param yM m to the north
 */
public record Core(String plot, LocalDate date, int number, int bag, double xM, double yM) {}
