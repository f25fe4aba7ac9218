package leafturn.trials.design.ground;

import java.util.List;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.TrialLawn;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * A lawn as far as it can carry plots.
 *
 * @param turf all that is mown
 * @param measurable what lies far enough from edges and beds to be measured; may be empty
 * @param fromEdge what lies far enough from the edges, beds aside
 */
public record Surface(Geometry turf, Geometry measurable, Geometry fromEdge) {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();

  /** No area at all. */
  static final Geometry NOTHING = GEOMETRY.createPolygon();

  /** The surface of a lawn: its outline without beds, and that without the distances kept. */
  public static Surface of(TrialLawn lawn, PlotRule plots) {
    Geometry outside = GEOMETRY.createPolygon();
    Geometry beds = UnaryUnionOp.union(lawn.keepOut(), GEOMETRY);
    for (int piece = 0; piece < lawn.turf().getNumGeometries(); piece++) {
      Polygon polygon = (Polygon) lawn.turf().getGeometryN(piece);
      outside = outside.union(filled(polygon.getExteriorRing()));
      for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
        Geometry bed = filled(polygon.getInteriorRingN(hole));
        beds = beds == null ? bed : beds.union(bed);
      }
    }
    Geometry kept = beds == null ? GEOMETRY.createPolygon() : beds;
    Geometry turf = areas(lawn.turf().difference(kept));
    Geometry fromEdge = outside.buffer(-plots.edgeM());
    Geometry inner = fromEdge.difference(kept.buffer(plots.bedM()));
    return new Surface(turf, areas(inner.intersection(turf)), areas(fromEdge));
  }

  private static Polygon filled(LinearRing ring) {
    return GEOMETRY.createPolygon(ring.getCoordinates());
  }

  /** The polygons of a geometry alone: an overlay may leave points and lines too. */
  static Geometry areas(Geometry geometry) {
    Geometry whole = geometry.isValid() ? geometry : GeometryFixer.fix(geometry);
    Polygon[] polygons =
        ((List<?>) PolygonExtracter.getPolygons(whole))
            .stream().map(Polygon.class::cast).toArray(Polygon[]::new);
    return polygons.length == 1 ? polygons[0] : GEOMETRY.createMultiPolygon(polygons);
  }

  /** The part of a geometry inside an upright rectangle. */
  static Geometry within(Geometry geometry, Envelope box) {
    return areas(geometry.intersection(GEOMETRY.toGeometry(box)));
  }

  /** The largest of the pieces of a geometry. */
  static Geometry largestPiece(Geometry geometry) {
    Geometry largest = geometry;
    for (int piece = 0; piece < geometry.getNumGeometries(); piece++) {
      Geometry other = geometry.getGeometryN(piece);
      if (largest == geometry || other.getArea() > largest.getArea()) {
        largest = other;
      }
    }
    return largest;
  }

  /** A geometry without one of its pieces. */
  static Geometry without(Geometry geometry, Geometry piece) {
    return geometry.getNumGeometries() < 2 ? NOTHING : areas(geometry.difference(piece));
  }
}
