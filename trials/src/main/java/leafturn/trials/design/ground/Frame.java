package leafturn.trials.design.ground;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * A grid turned so that mower passes run along its second axis; the first runs across them, to the
 * right of whoever mows in the direction of the bearing.
 *
 * @param bearingDeg direction of the passes, degrees clockwise from north
 */
public record Frame(double bearingDeg) {
  /** A geometry of the lawn's grid on this one. */
  public Geometry onto(Geometry geometry) {
    return turned(geometry, bearingDeg);
  }

  /** A geometry of this grid on the lawn's. */
  public Geometry back(Geometry geometry) {
    return turned(geometry, -bearingDeg);
  }

  private static Geometry turned(Geometry geometry, double degrees) {
    return AffineTransformation.rotationInstance(Math.toRadians(degrees)).transform(geometry);
  }
}
