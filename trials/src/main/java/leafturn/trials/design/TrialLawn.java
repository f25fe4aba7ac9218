package leafturn.trials.design;

import java.util.List;
import leafturn.quantity.Range;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Geometry;

/**
 * A lawn of a trial on a plane grid in m, x to the east and y to the north.
 *
 * @param name 1 to 80 characters, unique in the trial
 * @param turf its surface, beds and the like cut out where the outline has them as holes
 * @param keepOut beds, trees and paths on the same grid, whether the outline has them or not
 * @param origin where the grid's origin lies on the earth, or null when nobody has said
 * @param mower that mows it
 * @param bearingDeg direction of the passes, degrees clockwise from north, 0 to 360, or null for
 *     the best
 */
public record TrialLawn(
    String name,
    Geometry turf,
    List<Geometry> keepOut,
    @Nullable Origin origin,
    TrialMower mower,
    @Nullable Double bearingDeg) {
  /** Longest name, characters. */
  public static final int LONGEST_NAME = 80;

  /** Direction of the passes. */
  public static final Range BEARING_DEG = new Range("bearingDeg", 0, 360, "degrees");

  /**
   * A place on the earth, WGS84.
   *
   * @param longitudeDeg degrees east
   * @param latitudeDeg degrees north
   */
  public record Origin(double longitudeDeg, double latitudeDeg) {}

  /**
   * @throws IllegalArgumentException when the name is blank or too long, the surface is empty or
   *     the bearing out of range
   */
  public TrialLawn {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "the name of a lawn has 1 to %d characters, not \"%s\"".formatted(LONGEST_NAME, name));
    }
    if (!(turf.getArea() > 0)) {
      throw new IllegalArgumentException("%s has no surface".formatted(name));
    }
    if (bearingDeg != null) {
      BEARING_DEG.checked(bearingDeg);
    }
    turf = turf.copy();
    keepOut = keepOut.stream().map(Geometry::copy).toList();
  }
}
