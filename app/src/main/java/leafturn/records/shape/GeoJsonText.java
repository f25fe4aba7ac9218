package leafturn.records.shape;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import leafturn.records.shape.LocalGrid.LonLat;

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

  private GeoJsonText(JsonGenerator json) {
    this.json = json;
  }

  /**
   * The text of a file with these outlines.
   *
   * @throws IllegalArgumentException when one has no anchor: its place on the earth is not known
   */
  public static String of(List<NamedOutline> outlines) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      json.writeStringField("type", "FeatureCollection");
      json.writeArrayFieldStart("features");
      for (NamedOutline outline : outlines) {
        new GeoJsonText(json).feature(outline);
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private void feature(NamedOutline named) throws IOException {
    Outline outline = named.outline();
    Anchor anchor = outline.anchor();
    if (anchor == null) {
      throw new IllegalArgumentException(
          "an outline without an anchor has no longitude and latitude: " + named.name());
    }
    json.writeStartObject();
    json.writeStringField("type", "Feature");
    json.writeObjectFieldStart("properties");
    if (named.name() != null) {
      json.writeStringField(NAME, named.name());
    }
    json.writeNumberField(ANCHOR_LONGITUDE, anchor.longitudeDeg());
    json.writeNumberField(ANCHOR_LATITUDE, anchor.latitudeDeg());
    json.writeEndObject();
    json.writeObjectFieldStart("geometry");
    geometry(outline.patches(), new LocalGrid(anchor));
    json.writeEndObject();
    json.writeEndObject();
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
