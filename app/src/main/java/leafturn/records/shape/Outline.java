package leafturn.records.shape;

import java.util.List;
import java.util.stream.Collectors;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;

/**
 * The outline of a lawn, a bed or a border on a plain metric grid: x to the east, y to the north.
 *
 * @param patches its pieces, one as a rule; they do not overlap
 * @param anchor where the grid's origin lies on the earth, or null when nobody has said
 */
public record Outline(List<Patch> patches, @Nullable Anchor anchor) {
  /** Smallest area, m². */
  public static final double LEAST_AREA_M2 = 1;

  /** Largest area, m². */
  public static final double MOST_AREA_M2 = 1_000_000;

  /** The most corners of all rings together. */
  public static final int MOST_CORNERS = 5_000;

  /**
   * The upright rectangle around an outline, m.
   *
   * @param westM least x
   * @param southM least y
   * @param eastM greatest x
   * @param northM greatest y
   */
  public record Bounds(double westM, double southM, double eastM, double northM) {
    /** From west to east, m. */
    public double widthM() {
      return eastM - westM;
    }

    /** From south to north, m. */
    public double depthM() {
      return northM - southM;
    }
  }

  /**
   * @throws IllegalArgumentException when {@link OutlineCheck} finds a fault
   */
  public Outline {
    patches = List.copyOf(patches);
    List<OutlineCheck.Finding> findings = OutlineCheck.of(patches, Corner::words);
    if (!findings.isEmpty()) {
      throw new IllegalArgumentException(
          findings.stream().map(OutlineCheck.Finding::sentence).collect(Collectors.joining(" ")));
    }
  }

  /** A rectangle with one corner at the origin. */
  public static Outline rectangle(double lengthM, double widthM) {
    Ring edge = Ring.of(0, 0, lengthM, 0, lengthM, widthM, 0, widthM);
    return new Outline(List.of(new Patch(edge, List.of())), null);
  }

  /**
   * The outline of a geometry on its grid, m.
   *
   * @throws IllegalArgumentException when it makes no outline
   */
  public static Outline of(Geometry geometry, @Nullable Anchor anchor) {
    return new Outline(Patch.allOf(geometry), anchor);
  }

  /**
   * Reads an outline from a JSON document, or reports its faults and returns null. The form is that
   * in which it is written: {@code {"patches": [{"edge": [[0, 0], [12, 0], [12, 8]], "holes":
   * [...]}], "anchor": {"longitudeDeg": 10, "latitudeDeg": 50}}}.
   */
  public static @Nullable Outline read(JsonObject json) {
    return new OutlineReading(json).read();
  }

  /**
   * Reads the outline in a field of a document, or reports its faults and returns null: an object
   * as it is written, or the text of a list of corners as a form sends it, see {@link OutlineText}.
   */
  public static @Nullable Outline read(JsonObject json, String name) {
    JsonValue value = json.take(name);
    if (value == null) {
      return null;
    }
    if (!(value.content() instanceof String text)) {
      JsonObject object = json.object(name);
      return json.holdsObject(name) ? read(object) : null;
    }
    try {
      return OutlineText.read(name, text);
    } catch (InputException e) {
      e.faultsByField().forEach(fault -> json.fault(name, fault.sentence()));
      return null;
    }
  }

  /** Area without the holes, m². */
  public double areaM2() {
    return geometry().getArea();
  }

  /** Area of the holes, m². */
  public double holesAreaM2() {
    double area = 0;
    for (Patch patch : patches) {
      for (Ring hole : patch.holes()) {
        area += Math.abs(hole.signedAreaM2());
      }
    }
    return area;
  }

  /** Length of all edges, those of the holes too, m: what a trimmer goes along. */
  public double perimeterM() {
    return geometry().getLength();
  }

  /** The upright rectangle around it. */
  public Bounds bounds() {
    Envelope box = geometry().getEnvelopeInternal();
    return new Bounds(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  /** All rings: of each piece the edge, then its holes. */
  public List<Ring> rings() {
    return patches.stream().flatMap(patch -> patch.rings().stream()).toList();
  }

  /** What to call the line of a ring: "Edge", "Hole 2", with its piece where there are several. */
  public String lineName(int ring) {
    int piece = 0;
    int within = ring;
    while (within >= patches.get(piece).rings().size()) {
      within -= patches.get(piece).rings().size();
      piece++;
    }
    String line = within == 0 ? "Edge" : "Hole " + within;
    return patches.size() == 1 ? line : "%s of piece %d".formatted(line, piece + 1);
  }

  /** Number of corners of all rings together. */
  public int corners() {
    return rings().stream().mapToInt(ring -> ring.corners().size()).sum();
  }

  /** The same outline with another anchor, or with none. */
  public Outline anchoredAt(@Nullable Anchor other) {
    return new Outline(patches, other);
  }

  /** The pieces as a geometry, m. */
  public MultiPolygon geometry() {
    return new GeometryFactory()
        .createMultiPolygon(patches.stream().map(Patch::geometry).toArray(Polygon[]::new));
  }
}
