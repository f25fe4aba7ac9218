package leafturn.trials.design.ground;

import org.locationtech.jts.geom.Geometry;

/**
 * Where a plot lies.
 *
 * @param plot all that gets the treatment
 * @param measured the part of it that is observed and sampled
 * @param lost the smaller parts that a bed or the edge cuts off, which belong to no plot; may be
 *     empty
 */
public record Place(Geometry plot, Geometry measured, Geometry lost) {
  /** Area of the parts that are cut off, m2. */
  public double lostM2() {
    return lost.getArea();
  }
}
