package leafturn.trials.design.ground;

import org.locationtech.jts.geom.Geometry;

/**
 * Where a plot lies.
 *
 * @param plot all that gets the treatment
 * @param measured the part of it that is observed and sampled
 */
public record Place(Geometry plot, Geometry measured) {}
