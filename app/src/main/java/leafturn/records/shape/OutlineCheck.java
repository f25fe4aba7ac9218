package leafturn.records.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import leafturn.records.Numbers;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Says whether pieces with holes make an outline, and if not, why and where. */
final class OutlineCheck {
  /** The place of a finding that belongs to a whole piece, or to the whole outline. */
  static final int WHOLE = -1;

  private static final int LEAST_CORNERS = 3;

  private final Function<Corner, String> words;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * What is wrong.
   *
   * @param patch index of the piece, or {@link #WHOLE}
   * @param ring 0 for its edge, 1 for its first hole and so on, or {@link #WHOLE}
   * @param sentence what is there, where, and what would be right
   */
  record Finding(int patch, int ring, String sentence) {}

  private OutlineCheck(Function<Corner, String> words) {
    this.words = words;
  }

  /**
   * Every fault that can be told; none when the pieces make an outline.
   *
   * @param words names a place in the terms of whoever gave it
   */
  static List<Finding> of(List<Patch> patches, Function<Corner, String> words) {
    OutlineCheck check = new OutlineCheck(words);
    if (check.sizeIsFit(patches)) {
      check.rings(patches);
      if (check.findings.isEmpty()) {
        check.patches(patches);
      }
      if (check.findings.isEmpty()) {
        check.whole(patches);
      }
    }
    return List.copyOf(check.findings);
  }

  private boolean sizeIsFit(List<Patch> patches) {
    if (patches.isEmpty()) {
      add(WHOLE, WHOLE, "it has no corners; give at least three.");
      return false;
    }
    int corners =
        patches.stream()
            .flatMap(patch -> patch.rings().stream())
            .mapToInt(ring -> ring.corners().size())
            .sum();
    if (corners > Outline.MOST_CORNERS) {
      add(
          WHOLE,
          WHOLE,
          String.format(
              Locale.ROOT,
              "it has %,d corners; leave out those that hardly matter, down to %,d or fewer.",
              corners,
              Outline.MOST_CORNERS));
      return false;
    }
    return true;
  }

  private void rings(List<Patch> patches) {
    for (int patch = 0; patch < patches.size(); patch++) {
      List<Ring> rings = patches.get(patch).rings();
      for (int ring = 0; ring < rings.size(); ring++) {
        ring(patch, ring, rings.get(ring));
      }
    }
  }

  private void ring(int patch, int index, Ring ring) {
    int corners = ring.corners().size();
    if (corners < LEAST_CORNERS) {
      add(
          patch,
          index,
          "it has %s; give at least three different ones."
              .formatted(corners == 1 ? "one corner" : corners + " corners"));
      return;
    }
    Geometry alone = ring.geometry().getFactory().createPolygon(ring.geometry());
    String place = faultPlace(alone);
    if (place != null) {
      add(
          patch,
          index,
          "its line crosses or touches itself near %s; give the corners in the order of a walk"
                  .formatted(place)
              + " round it.");
    }
  }

  private void patches(List<Patch> patches) {
    for (int index = 0; index < patches.size(); index++) {
      Patch patch = patches.get(index);
      int before = findings.size();
      holesInside(index, patch);
      if (findings.size() == before) {
        holesApart(index, patch.geometry());
      }
    }
  }

  private void holesInside(int index, Patch patch) {
    Geometry edge = patch.edge().geometry();
    PreparedGeometry inside =
        PreparedGeometryFactory.prepare(edge.getFactory().createPolygon(edge.getCoordinates()));
    for (int hole = 0; hole < patch.holes().size(); hole++) {
      Ring ring = patch.holes().get(hole);
      if (!inside.covers(ring.geometry())) {
        add(
            index,
            hole + 1,
            "this hole reaches outside the edge near %s; keep holes inside the piece they are cut"
                    .formatted(outermost(ring, inside))
                + " from.");
      }
    }
  }

  /** A corner of a hole that is outside, or its first one when only a side is. */
  private String outermost(Ring ring, PreparedGeometry inside) {
    GeometryFactory geometry = new GeometryFactory();
    for (Corner corner : ring.corners()) {
      if (!inside.covers(geometry.createPoint(new Coordinate(corner.xM(), corner.yM())))) {
        return words.apply(corner);
      }
    }
    return words.apply(ring.corners().get(0));
  }

  private void holesApart(int index, Polygon patch) {
    TopologyValidationError error = new IsValidOp(patch).getValidationError();
    if (error == null) {
      return;
    }
    String place = place(error);
    String sentence =
        error.getErrorType() == TopologyValidationError.DISCONNECTED_INTERIOR
            ? "holes cut this piece into separate parts near %s; give each part as its own piece."
            : "near %s a hole overlaps another or runs along the edge; join the holes, or lead the"
                + " edge round them.";
    add(index, WHOLE, sentence.formatted(place));
  }

  private void whole(List<Patch> patches) {
    Polygon[] polygons = patches.stream().map(Patch::geometry).toArray(Polygon[]::new);
    Geometry all = new GeometryFactory().createMultiPolygon(polygons);
    String place = faultPlace(all);
    if (place != null) {
      add(
          WHOLE,
          WHOLE,
          "two pieces overlap or share a side near %s; join them into one.".formatted(place));
      return;
    }
    double area = all.getArea();
    if (area < Outline.LEAST_AREA_M2 || area > Outline.MOST_AREA_M2) {
      add(
          WHOLE,
          WHOLE,
          "its area is %s m²; an outline has from 1 to 1,000,000 m²; check the unit: m."
              .formatted(Numbers.plain(Math.rint(area * 1000) / 1000)));
    }
  }

  private @Nullable String faultPlace(Geometry geometry) {
    TopologyValidationError error = new IsValidOp(geometry).getValidationError();
    return error == null ? null : place(error);
  }

  private String place(TopologyValidationError error) {
    Coordinate at = error.getCoordinate();
    return words.apply(new Corner(at.getX(), at.getY()));
  }

  private void add(int patch, int ring, String sentence) {
    findings.add(new Finding(patch, ring, sentence));
  }
}
