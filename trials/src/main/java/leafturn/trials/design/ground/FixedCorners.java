package leafturn.trials.design.ground;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Angle;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Two corners of a lawn from which every other place is found with two tapes.
 *
 * @param a one corner
 * @param b the other
 */
public record FixedCorners(Coordinate a, Coordinate b) {
  /** A corner that bends less is not found again on the ground, radians. */
  private static final double LEAST_BEND = Math.toRadians(20);

  /** More corners than this are too many to try in pairs; every so many is left out. */
  private static final int MOST_TRIED = 60;

  /**
   * The two corners between which the tapes to the given places cross best: the pair with the
   * greatest least sine of the angle between the tapes.
   */
  public static FixedCorners of(Geometry turf, List<Coordinate> places) {
    List<Coordinate> corners = corners(turf);
    FixedCorners best = new FixedCorners(corners.get(0), corners.get(1));
    double most = -1;
    for (int i = 0; i < corners.size(); i++) {
      for (int j = i + 1; j < corners.size(); j++) {
        FixedCorners pair = new FixedCorners(corners.get(i), corners.get(j));
        double crossing = pair.leastCrossing(places);
        if (crossing > most + 1e-6) {
          most = crossing;
          best = pair;
        }
      }
    }
    return best;
  }

  /** Corners that a person can find again: those of the outer edge that bend enough. */
  private static List<Coordinate> corners(Geometry turf) {
    List<Coordinate> bends = new ArrayList<>();
    Polygon largest = (Polygon) Surface.largestPiece(turf);
    Coordinate[] ring = largest.getExteriorRing().getCoordinates();
    int corners = ring.length - 1;
    for (int i = 0; i < corners; i++) {
      Coordinate before = ring[(i + corners - 1) % corners];
      Coordinate after = ring[(i + 1) % corners];
      if (Math.PI - Angle.angleBetween(before, ring[i], after) >= LEAST_BEND) {
        bends.add(ring[i].copy());
      }
    }
    List<Coordinate> known = bends.size() < 2 ? List.of(ring).subList(0, corners) : bends;
    int step = (known.size() + MOST_TRIED - 1) / MOST_TRIED;
    List<Coordinate> tried = new ArrayList<>();
    for (int i = 0; i < known.size(); i += step) {
      tried.add(known.get(i));
    }
    return tried;
  }

  private double leastCrossing(List<Coordinate> places) {
    double least = 1;
    for (Coordinate place : places) {
      boolean atCorner = place.distance(a) < 0.01 || place.distance(b) < 0.01;
      if (!atCorner) {
        least = Math.min(least, Math.sin(Angle.angleBetween(a, place, b)));
      }
    }
    return least;
  }

  /**
   * True when a place lies to the left of somebody who looks from the first corner to the other.
   */
  public boolean isLeft(Coordinate place) {
    return Orientation.index(a, b, place) == Orientation.LEFT;
  }
}
