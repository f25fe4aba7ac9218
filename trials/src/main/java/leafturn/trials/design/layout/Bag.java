package leafturn.trials.design.layout;

import java.time.LocalDate;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * A bag with a sample for the laboratory, which sees the code alone.
 *
 * @param code see {@link BlindCodes}
 * @param holds {@link Outcome.Kind#SOIL} or {@link Outcome.Kind#TISSUE}
 * @param plot code of the plot
 * @param date of sampling
 * @param number from 1, in the plot and on the date
 * @param duplicateOf code of the bag whose mixed sample fills this one too, as a blind duplicate;
 *     null for a bag of its own
 */
public record Bag(
    String code,
    Outcome.Kind holds,
    String plot,
    LocalDate date,
    int number,
    @Nullable String duplicateOf) {}
