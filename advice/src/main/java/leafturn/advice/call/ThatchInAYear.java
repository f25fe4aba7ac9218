package leafturn.advice.call;

/**
 * Thatch a year from now if every mowing were done like one choice.
 *
 * @param mm thatch, mm, over the years of the record that stand in for the year to come
 * @param years their number
 */
public record ThatchInAYear(Spread mm, int years) {}
