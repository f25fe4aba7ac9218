package leafturn.trials.design;

/**
 * A comparison that was planned: the first treatment minus the second.
 *
 * @param first name of a treatment
 * @param second name of another
 */
public record Contrast(String first, String second) {}
