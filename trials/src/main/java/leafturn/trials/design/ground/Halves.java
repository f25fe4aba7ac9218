package leafturn.trials.design.ground;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Two halves of a lawn of equal area on both sides of a straight guard strip.
 *
 * @param frame whose passes run along the strip
 * @param first the half on the left of the bearing
 * @param second the half on the right
 */
public record Halves(Frame frame, Place first, Place second) {
  /** Between the bearings that are tried, degrees. */
  private static final double STEP_DEG = 5;

  private static final double HALF_TURN_DEG = 180;

  /** A bearing that leaves less to measure than this share of the best is not taken. */
  private static final double LEAST_SHARE = 0.75;

  /** A later bearing must be better by this, so that a longer side of the lawn is preferred. */
  private static final double MUCH_NEARER = 0.95;

  /**
   * Halves along a bearing, or along the best one: of those that cut each piece of turf into the
   * fewest parts and leave enough to measure, the one whose halves lie closest together, because
   * neighbours share soil, sun and slope; along a side of the lawn where one will do, because the
   * passes there end square and no wedge is left to mow (common practice, no source).
   *
   * @param bearingDeg direction of the guard strip, or null for the best
   * @param guardM width of the guard strip, m
   */
  public static Halves of(Surface surface, @Nullable Double bearingDeg, double guardM) {
    if (bearingDeg != null) {
      return along(surface, bearingDeg, guardM);
    }
    List<Halves> all = new ArrayList<>();
    for (double bearing : Bearings.of(surface.turf(), STEP_DEG)) {
      all.add(along(surface, bearing % HALF_TURN_DEG, guardM));
    }
    int fewest = all.stream().mapToInt(Halves::parts).min().orElseThrow();
    double most = all.stream().mapToDouble(Halves::lessMeasurableM2).max().orElseThrow();
    int sides = Bearings.alongSides(surface.turf()).size();
    List<Halves> fit = all.subList(0, sides).stream().filter(e -> e.isFit(fewest, most)).toList();
    return nearest(
        fit.isEmpty() ? all.stream().filter(e -> e.isFit(fewest, most)).toList() : fit, all.get(0));
  }

  private boolean isFit(int fewest, double mostM2) {
    return parts() == fewest && lessMeasurableM2() >= LEAST_SHARE * mostM2;
  }

  private static Halves nearest(List<Halves> some, Halves otherwise) {
    Halves best = otherwise;
    double nearest = Double.POSITIVE_INFINITY;
    for (Halves each : some) {
      if (each.apartM() < MUCH_NEARER * nearest) {
        best = each;
        nearest = each.apartM();
      }
    }
    return best;
  }

  private static Halves along(Surface surface, double bearingDeg, double guardM) {
    Frame frame = new Frame(bearingDeg);
    Geometry turf = frame.onto(surface.turf());
    Geometry measurable = frame.onto(surface.measurable());
    double middle = new AreaAcross(turf).middleOfStrip(guardM);
    Envelope box = turf.getEnvelopeInternal();
    Envelope left = new Envelope(box.getMinX(), middle - guardM / 2, box.getMinY(), box.getMaxY());
    Envelope right = new Envelope(middle + guardM / 2, box.getMaxX(), box.getMinY(), box.getMaxY());
    return new Halves(
        frame, place(frame, turf, measurable, left), place(frame, turf, measurable, right));
  }

  private static Place place(Frame frame, Geometry turf, Geometry measurable, Envelope box) {
    return new Place(
        frame.back(Surface.within(turf, box)),
        frame.back(Surface.within(measurable, box)),
        Surface.NOTHING);
  }

  private int parts() {
    return first.plot().getNumGeometries() + second.plot().getNumGeometries();
  }

  private double lessMeasurableM2() {
    return Math.min(first.measured().getArea(), second.measured().getArea());
  }

  private double apartM() {
    return first.plot().getCentroid().distance(second.plot().getCentroid());
  }
}
