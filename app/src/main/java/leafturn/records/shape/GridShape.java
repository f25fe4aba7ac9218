package leafturn.records.shape;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import leafturn.records.shape.LocalGrid.LonLat;
import org.jspecify.annotations.Nullable;

/** Outlines as parts of larger documents, in m: pieces with edge and holes, as they are read. */
public final class GridShape {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private GridShape() {}

  /** An outline on its own grid, with the place of that grid where it is known. */
  public static ObjectNode of(Outline outline) {
    ObjectNode shape = shape(outline, null, null);
    Anchor anchor = outline.anchor();
    if (anchor != null) {
      shape
          .putObject("anchor")
          .put("longitudeDeg", anchor.longitudeDeg())
          .put("latitudeDeg", anchor.latitudeDeg());
    }
    return shape;
  }

  /** An outline on the grid of another place; null where its own place is not known. */
  public static @Nullable ObjectNode onGridOf(Anchor place, Outline outline) {
    Anchor own = outline.anchor();
    return own == null ? null : shape(outline, new LocalGrid(own), new LocalGrid(place));
  }

  private static ObjectNode shape(
      Outline outline, @Nullable LocalGrid from, @Nullable LocalGrid to) {
    ObjectNode shape = NODES.objectNode();
    ArrayNode patches = shape.putArray("patches");
    for (Patch patch : outline.patches()) {
      ObjectNode piece = patches.addObject();
      piece.set("edge", ring(patch.edge(), from, to));
      if (!patch.holes().isEmpty()) {
        ArrayNode holes = piece.putArray("holes");
        patch.holes().forEach(hole -> holes.add(ring(hole, from, to)));
      }
    }
    return shape;
  }

  private static ArrayNode ring(Ring ring, @Nullable LocalGrid from, @Nullable LocalGrid to) {
    ArrayNode corners = NODES.arrayNode();
    List<Corner> given = ring.corners();
    for (Corner corner : given) {
      Corner there = corner;
      if (from != null && to != null) {
        LonLat place = from.onEarth(corner);
        double[] moved = to.onGrid(place);
        there = new Corner(moved[0], moved[1]);
      }
      corners.addArray().add(there.xM()).add(there.yM());
    }
    return corners;
  }
}
