package leafturn.trials.design.layout;

import leafturn.trials.design.ground.Place;

/**
 * A plot with its place.
 *
 * @param code short and unique, as {@code B2-1}: block and position in it; nobody can tell the
 *     treatment from it
 * @param unit its block, position and treatment
 * @param place where it lies
 * @param where it lies in words, as "western half" or "row 1, strip 3"
 */
public record LaidPlot(String code, Unit unit, Place place, String where) {}
