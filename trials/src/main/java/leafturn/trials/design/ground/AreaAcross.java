package leafturn.trials.design.ground;

import java.util.function.DoubleUnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** How the area of a polygon with holes is spread along the first axis. */
final class AreaAcross {
  private static final int HALVINGS = 200;

  private final Geometry geometry;
  private final Envelope box;

  AreaAcross(Geometry geometry) {
    this.geometry = geometry;
    this.box = geometry.getEnvelopeInternal();
  }

  /**
   * Area where the first coordinate is below a limit, m². By the line integral of -y dx along the
   * edges as far as they lie below it: the cut itself has dx = 0.
   *
   * @source definition
   */
  double belowM2(double limit) {
    double area = 0;
    for (int part = 0; part < geometry.getNumGeometries(); part++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(part);
      area += Math.abs(integral(polygon.getExteriorRing().getCoordinates(), limit));
      for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
        area -= Math.abs(integral(polygon.getInteriorRingN(hole).getCoordinates(), limit));
      }
    }
    return area;
  }

  private static double integral(Coordinate[] ring, double limit) {
    double sum = 0;
    double base = ring[0].y;
    for (int i = 0; i + 1 < ring.length; i++) {
      Coordinate from = ring[i];
      Coordinate to = ring[i + 1];
      double length = Math.abs(to.x - from.x);
      double left = Math.min(from.x, to.x);
      double share = length == 0 ? 0 : Math.min(1, Math.max(0, (limit - left) / length));
      if (share > 0) {
        boolean forward = to.x > from.x;
        double yLeft = forward ? from.y : to.y;
        double yRight = forward ? to.y : from.y;
        double yCut = yLeft + share * (yRight - yLeft);
        double piece = share * length * ((yLeft + yCut) / 2 - base);
        sum += forward ? -piece : piece;
      }
    }
    return sum;
  }

  /** The limit below which a share of the area lies. */
  double limitOfShare(double share) {
    double wanted = share * geometry.getArea();
    return zero(limit -> belowM2(limit) - wanted);
  }

  /** The middle of a strip that leaves as much area below it as above it. */
  double middleOfStrip(double widthM) {
    double all = geometry.getArea();
    return zero(middle -> belowM2(middle - widthM / 2) - (all - belowM2(middle + widthM / 2)));
  }

  /** Where a function that never falls passes zero between the ends of the geometry. */
  private double zero(DoubleUnaryOperator function) {
    double low = box.getMinX();
    double high = box.getMaxX();
    for (int i = 0; i < HALVINGS && low < high; i++) {
      double middle = (low + high) / 2;
      if (function.applyAsDouble(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
