package leafturn.trials.design.ground;

import org.locationtech.jts.geom.Geometry;

/**
 * Where a plot lies.
 *
 * @param plot all that gets the treatment
 * @param measured the part of it that is observed and sampled
 * @param lostM2 area of the smaller parts that a bed or the edge cuts off, m2; they belong to no
 *     plot
 */
public record Place(Geometry plot, Geometry measured, double lostM2) {}
