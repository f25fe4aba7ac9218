package leafturn.trials.design.layout;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A bag of soil for the laboratory, which sees the code alone.
 *
 * @param code see {@link BlindCodes}
 * @param plot code of the plot
 * @param date of sampling
 * @param number from 1, in the plot and on the date
 * @param duplicateOf code of the bag whose mixed soil fills this one too, as a blind duplicate;
 *     null for a bag of its own
 */
public record Bag(
    String code, String plot, LocalDate date, int number, @Nullable String duplicateOf) {}
