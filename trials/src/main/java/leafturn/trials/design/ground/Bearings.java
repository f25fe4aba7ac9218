package leafturn.trials.design.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Directions in which a lawn may be mown. */
final class Bearings {
  private static final double HALF_TURN_DEG = 180;

  /** A side shorter than this share of all sides gives no direction of its own. */
  private static final double LEAST_SHARE = 0.05;

  /** Directions nearer than this are one. */
  private static final double NEAR_DEG = 0.5;

  /** Bearings are told to a tenth of a degree. */
  private static final double STEPS_PER_DEG = 10;

  private Bearings() {}

  private record Side(double bearingDeg, double lengthM) {}

  /**
   * Degrees clockwise from north, 0 to below 180: along the longer sides, the longest first, then
   * every so many degrees.
   */
  static List<Double> of(Geometry turf, double stepDeg) {
    List<Double> bearings = new ArrayList<>(alongSides(turf));
    for (double bearing = 0; bearing < HALF_TURN_DEG; bearing += stepDeg) {
      add(bearings, bearing);
    }
    return bearings;
  }

  /** Those along the longer sides, the longest first. */
  static List<Double> alongSides(Geometry turf) {
    List<Double> bearings = new ArrayList<>();
    double least = LEAST_SHARE * turf.getLength();
    sides(turf).stream()
        .filter(side -> side.lengthM() >= least)
        .sorted(Comparator.comparingDouble(Side::lengthM).reversed())
        .forEach(side -> add(bearings, side.bearingDeg()));
    return bearings;
  }

  private static void add(List<Double> bearings, double bearing) {
    boolean known =
        bearings.stream()
            .mapToDouble(other -> Math.abs(other - bearing))
            .anyMatch(apart -> Math.min(apart, HALF_TURN_DEG - apart) < NEAR_DEG);
    if (!known) {
      bearings.add(bearing);
    }
  }

  private static List<Side> sides(Geometry turf) {
    List<Side> sides = new ArrayList<>();
    for (int piece = 0; piece < turf.getNumGeometries(); piece++) {
      Coordinate[] ring = ((Polygon) turf.getGeometryN(piece)).getExteriorRing().getCoordinates();
      for (int i = 0; i + 1 < ring.length; i++) {
        double bearing =
            Math.toDegrees(Math.atan2(ring[i + 1].x - ring[i].x, ring[i + 1].y - ring[i].y));
        double rounded = Math.rint(bearing * STEPS_PER_DEG) / STEPS_PER_DEG;
        double halfTurn = ((rounded % HALF_TURN_DEG) + HALF_TURN_DEG) % HALF_TURN_DEG;
        sides.add(new Side(halfTurn, ring[i].distance(ring[i + 1])));
      }
    }
    return sides;
  }
}
