package leafturn.trials.design.layout;

import java.time.LocalDate;

/**
 * A bag of soil for the laboratory, which sees the code alone.
 *
 * @param code see {@link BlindCodes}
 * @param plot code of the plot
 * @param date of sampling
 * @param number from 1, in the plot and on the date
 */
public record Bag(String code, String plot, LocalDate date, int number) {}
