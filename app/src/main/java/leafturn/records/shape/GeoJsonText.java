package leafturn.records.shape;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.shape.LocalGrid.LonLat;
import org.jspecify.annotations.Nullable;

/**
 * Writes outlines as GeoJSON (RFC 7946): a FeatureCollection with one feature for each, edges
 * anticlockwise and holes clockwise, degrees with nine decimals, which keep the millimetre.
 */
public final class GeoJsonText {
  static final String NAME = "name";
  static final String ANCHOR_LONGITUDE = "anchorLongitudeDeg";
  static final String ANCHOR_LATITUDE = "anchorLatitudeDeg";

  private static final double STEPS_PER_DEG = 1e9;
  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator json;

  /**
   * Something on the earth and what is said of it.
   *
   * @param properties texts, numbers and flags by name
   * @param anchor of the grid
   * @param patches its pieces; none for a place
   * @param place where it is when it has no pieces, else null
   */
  public record Feature(
      Map<String, Object> properties, Anchor anchor, List<Patch> patches, @Nullable Corner place) {}

  private GeoJsonText(JsonGenerator json) {
    this.json = json;
  }

  /**
   * The text of a file with these outlines.
   *
   * @throws IllegalArgumentException when one has no anchor: its place on the earth is not known
   */
  public static String of(List<NamedOutline> outlines) {
    return features(outlines.stream().map(GeoJsonText::feature).toList());
  }

  /** The text of a file with these features. */
  public static String features(List<Feature> features) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("type", "FeatureCollection");
      json.writeArrayFieldStart("features");
      for (Feature feature : features) {
        new GeoJsonText(json).write(feature);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static Feature feature(NamedOutline named) {
    Anchor anchor = named.outline().anchor();
    if (anchor == null) {
      throw new IllegalArgumentException(
          "an outline without an anchor has no longitude and latitude: " + named.name());
    }
    Map<String, Object> properties = new LinkedHashMap<>();
    if (named.name() != null) {
      properties.put(NAME, named.name());
    }
    properties.put(ANCHOR_LONGITUDE, anchor.longitudeDeg());
    properties.put(ANCHOR_LATITUDE, anchor.latitudeDeg());
    return new Feature(properties, anchor, named.outline().patches(), null);
  }

  private void write(Feature feature) throws IOException {
    json.writeStartObject();
    json.writeStringField("type", "Feature");
    json.writeObjectFieldStart("properties");
    for (Map.Entry<String, Object> property : feature.properties().entrySet()) {
      json.writeFieldName(property.getKey());
      property(property.getValue());
    }
    json.writeEndObject();
    json.writeObjectFieldStart("geometry");
    LocalGrid grid = new LocalGrid(feature.anchor());
    Corner place = feature.place();
    if (place == null) {
      geometry(feature.patches(), grid);
    } else {
      json.writeStringField("type", "Point");
      json.writeFieldName("coordinates");
      position(grid.onEarth(place));
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void property(Object value) throws IOException {
    if (value instanceof Integer whole) {
      json.writeNumber(whole);
    } else if (value instanceof Number number) {
      json.writeNumber(number.doubleValue());
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else {
      json.writeString(value.toString());
    }
  }

  private void geometry(List<Patch> patches, LocalGrid grid) throws IOException {
    boolean single = patches.size() == 1;
    json.writeStringField("type", single ? "Polygon" : "MultiPolygon");
    json.writeFieldName("coordinates");
    if (!single) {
      json.writeStartArray();
    }
    for (Patch patch : patches) {
      json.writeStartArray();
      for (Ring ring : patch.rings()) {
        ring(ring, grid);
      }
      json.writeEndArray();
    }
    if (!single) {
      json.writeEndArray();
    }
  }

  private void ring(Ring ring, LocalGrid grid) throws IOException {
    json.writeStartArray();
    for (Corner corner : ring.corners()) {
      position(grid.onEarth(corner));
    }
    position(grid.onEarth(ring.corners().get(0)));
    json.writeEndArray();
  }

  private void position(LonLat place) throws IOException {
    json.writeStartArray();
    json.writeNumber(rounded(place.longitudeDeg()));
    json.writeNumber(rounded(place.latitudeDeg()));
    json.writeEndArray();
  }

  private static double rounded(double degrees) {
    return Math.rint(degrees * STEPS_PER_DEG) / STEPS_PER_DEG;
  }
}
