package leafturn.records.shape;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import leafturn.records.shape.LocalGrid.LonLat;
import org.jspecify.annotations.Nullable;

/** Outlines as GeoJSON geometries whose coordinates are metres of a plain grid. */
public final class PlaneGeoJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private PlaneGeoJson() {}

  /** An outline on its own grid. */
  public static ObjectNode of(Outline outline) {
    return geometry(outline, null, null);
  }

  /** An outline on the grid of another place; null where its own place is not known. */
  public static @Nullable ObjectNode onGridOf(Anchor place, Outline outline) {
    Anchor own = outline.anchor();
    return own == null ? null : geometry(outline, new LocalGrid(own), new LocalGrid(place));
  }

  private static ObjectNode geometry(
      Outline outline, @Nullable LocalGrid from, @Nullable LocalGrid to) {
    boolean single = outline.patches().size() == 1;
    ObjectNode geometry = NODES.objectNode().put("type", single ? "Polygon" : "MultiPolygon");
    ArrayNode coordinates = geometry.putArray("coordinates");
    for (Patch patch : outline.patches()) {
      ArrayNode rings = single ? coordinates : coordinates.addArray();
      patch.rings().forEach(ring -> ring(rings.addArray(), ring, from, to));
    }
    return geometry;
  }

  private static void ring(
      ArrayNode into, Ring ring, @Nullable LocalGrid from, @Nullable LocalGrid to) {
    List<Corner> corners = ring.corners();
    for (int i = 0; i <= corners.size(); i++) {
      Corner corner = corners.get(i % corners.size());
      if (from != null && to != null) {
        LonLat place = from.onEarth(corner);
        double[] there = to.onGrid(place);
        corner = new Corner(there[0], there[1]);
      }
      into.addArray().add(corner.xM()).add(corner.yM());
    }
  }
}
