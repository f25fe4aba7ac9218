package leafturn.records.shape;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/**
 * A closed line through corners, each named once: a corner that repeats the one before it, or the
 * first at the end, is left out. Whether it bounds anything is for {@link OutlineCheck} to say.
 *
 * @param corners in order; the last is joined to the first
 */
public record Ring(@JsonValue List<Corner> corners) {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  public Ring {
    corners = withoutRepeats(corners);
  }

  /** A ring through places given as x, y, x, y, ... in m. */
  public static Ring of(double... coordinatesM) {
    if (coordinatesM.length % 2 != 0) {
      throw new IllegalArgumentException("coordinates come in pairs of x and y");
    }
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < coordinatesM.length; i += 2) {
      corners.add(new Corner(coordinatesM[i], coordinatesM[i + 1]));
    }
    return new Ring(corners);
  }

  static Ring of(LinearRing line) {
    return new Ring(
        Arrays.stream(line.getCoordinates()).map(at -> new Corner(at.getX(), at.getY())).toList());
  }

  private static List<Corner> withoutRepeats(List<Corner> corners) {
    List<Corner> kept = new ArrayList<>(corners.size());
    for (Corner corner : corners) {
      if (kept.isEmpty() || !kept.get(kept.size() - 1).equals(corner)) {
        kept.add(corner);
      }
    }
    while (kept.size() > 1 && kept.get(0).equals(kept.get(kept.size() - 1))) {
      kept.remove(kept.size() - 1);
    }
    return List.copyOf(kept);
  }

  /** Length all round, m. */
  public double lengthM() {
    double length = 0;
    for (int i = 0; i < corners.size(); i++) {
      length += corners.get(i).distanceM(next(i));
    }
    return length;
  }

  /** The corner that follows another, the first after the last. */
  public Corner next(int index) {
    return corners.get((index + 1) % corners.size());
  }

  /**
   * Area inside by the sum over its corners (x<sub>i</sub> y<sub>i+1</sub> - x<sub>i+1</sub>
   * y<sub>i</sub>) / 2, m²: positive when the corners run anticlockwise.
   *
   * @source definition
   */
  public double signedAreaM2() {
    if (corners.isEmpty()) {
      return 0;
    }
    Corner origin = corners.get(0);
    double twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      Corner here = corners.get(i);
      Corner next = next(i);
      twice += (here.xM() - origin.xM()) * (next.yM() - origin.yM());
      twice -= (next.xM() - origin.xM()) * (here.yM() - origin.yM());
    }
    return twice / 2;
  }

  /** The same ring from the same first corner, run through anticlockwise or clockwise. */
  Ring turned(boolean anticlockwise) {
    if (signedAreaM2() > 0 == anticlockwise || corners.size() < 3) {
      return this;
    }
    List<Corner> reversed = new ArrayList<>(corners);
    Collections.reverse(reversed.subList(1, reversed.size()));
    return new Ring(reversed);
  }

  /** The ring as a geometry; it must have three corners. */
  LinearRing geometry() {
    Coordinate[] coordinates = new Coordinate[corners.size() + 1];
    for (int i = 0; i < coordinates.length; i++) {
      Corner corner = corners.get(i % corners.size());
      coordinates[i] = new Coordinate(corner.xM(), corner.yM());
    }
    return GEOMETRY.createLinearRing(coordinates);
  }
}
