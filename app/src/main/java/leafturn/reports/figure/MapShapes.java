package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** Shapes on the ground as lines of a drawing. */
final class MapShapes {
  private final OutlineView view;

  MapShapes(OutlineView view) {
    this.view = view;
  }

  /** The edges of the areas of a shape, holes included; each without its last, repeated corner. */
  List<List<Point>> rings(Geometry geometryM) {
    List<List<Point>> rings = new ArrayList<>();
    for (int piece = 0; piece < geometryM.getNumGeometries(); piece++) {
      if (geometryM.getGeometryN(piece) instanceof Polygon polygon && !polygon.isEmpty()) {
        rings.add(ring(polygon.getExteriorRing().getCoordinates()));
        for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
          rings.add(ring(polygon.getInteriorRingN(hole).getCoordinates()));
        }
      }
    }
    return rings;
  }

  /** A line with all its corners. */
  List<Point> line(Coordinate[] cornersM) {
    return Arrays.stream(cornersM).map(corner -> view.point(corner.x, corner.y)).toList();
  }

  private List<Point> ring(Coordinate[] cornersM) {
    return line(Arrays.copyOf(cornersM, cornersM.length - 1));
  }
}
