package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.shape.Corner;
import leafturn.records.shape.Outline.Bounds;
import leafturn.records.shape.Ring;

/**
 * How an outline lies in its drawing: north up, both ways to one scale, in the middle.
 *
 * @param pxPerM scale
 * @param size the whole drawing
 * @param left px of x 0
 * @param bottom px of y 0
 */
record OutlineView(double pxPerM, Box size, double left, double bottom) {
  /** Corners nearer than this to the one before are left out of a drawing. */
  private static final double NEAR_PX = 0.4;

  static OutlineView of(Bounds bounds, OutlineFormat format) {
    return of(bounds, format, format.mostHeightPx);
  }

  static OutlineView of(Bounds bounds, OutlineFormat format, double mostHeightPx) {
    double roomX = format.widthPx - 2 * format.marginPx;
    double roomY = mostHeightPx - 2 * format.marginPx - format.footPx();
    double pxPerM = Math.min(roomX / bounds.widthM(), roomY / bounds.depthM());
    double inner = format.isLabelled() ? Math.max(40, pxPerM * bounds.depthM()) : roomY;
    double height = Math.ceil(inner + 2 * format.marginPx + format.footPx());
    double middleX = (bounds.westM() + bounds.eastM()) / 2;
    double middleY = (bounds.southM() + bounds.northM()) / 2;
    return new OutlineView(
        pxPerM,
        new Box(0, 0, format.widthPx, height),
        format.widthPx / 2 - pxPerM * middleX,
        format.marginPx + inner / 2 + pxPerM * middleY);
  }

  Point point(double xM, double yM) {
    return new Point(left + pxPerM * xM, bottom - pxPerM * yM);
  }

  Point point(Corner corner) {
    return point(corner.xM(), corner.yM());
  }

  /** The corners of a ring, without those that nobody could see. */
  List<Point> line(Ring ring) {
    List<Point> points = new ArrayList<>();
    for (Corner corner : ring.corners()) {
      Point next = point(corner);
      if (points.isEmpty() || apart(points.get(points.size() - 1), next) > NEAR_PX) {
        points.add(next);
      }
    }
    return points;
  }

  private static double apart(Point one, Point other) {
    return Math.hypot(one.x() - other.x(), one.y() - other.y());
  }
}
