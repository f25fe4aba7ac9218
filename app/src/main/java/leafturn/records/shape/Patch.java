package leafturn.records.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * One connected piece of an outline.
 *
 * @param edge runs anticlockwise
 * @param holes beds, trees, paths cut out of it; each runs clockwise
 */
public record Patch(Ring edge, List<Ring> holes) {
  public Patch {
    edge = edge.turned(true);
    holes = holes.stream().map(hole -> hole.turned(false)).toList();
  }

  /** The pieces of a geometry of polygons. */
  public static List<Patch> allOf(Geometry geometry) {
    List<Patch> patches = new ArrayList<>();
    for (int piece = 0; piece < geometry.getNumGeometries(); piece++) {
      patches.add(of((Polygon) geometry.getGeometryN(piece)));
    }
    return patches;
  }

  private static Patch of(Polygon polygon) {
    List<Ring> holes = new ArrayList<>();
    for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
      holes.add(Ring.of(polygon.getInteriorRingN(hole)));
    }
    return new Patch(Ring.of(polygon.getExteriorRing()), holes);
  }

  /** The edge and the holes after it. */
  public List<Ring> rings() {
    List<Ring> rings = new ArrayList<>();
    rings.add(edge);
    rings.addAll(holes);
    return rings;
  }

  /** The piece as a geometry; each ring must have three corners. */
  Polygon geometry() {
    LinearRing[] cutOut = holes.stream().map(Ring::geometry).toArray(LinearRing[]::new);
    LinearRing shell = edge.geometry();
    return shell.getFactory().createPolygon(shell, cutOut);
  }
}
