package leafturn.records.shape;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.records.Faults;
import leafturn.records.InputException;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.NearestName;
import leafturn.records.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * Reads outlines from GeoJSON (RFC 7946): a Polygon, a MultiPolygon, a Feature with one of them, or
 * a FeatureCollection with one outline in each feature. Longitude and latitude are laid on a plain
 * grid with its origin at the south-western corner of the outline, see {@link LocalGrid}.
 */
public final class GeoJsonFile {
  /** Largest file that is read, bytes. */
  public static final int LIMIT_BYTES = 2_000_000;

  private static final int MOST_FEATURES = 1000;
  private static final String FEATURE = "Feature";
  private static final List<String> GEOMETRIES = List.of("Polygon", "MultiPolygon");
  private static final List<String> TYPES =
      List.of("Polygon", "MultiPolygon", FEATURE, "FeatureCollection");

  /** Names that older files give to WGS84 in the order longitude, latitude. */
  private static final Set<String> SAME_SYSTEM =
      Set.of("urn:ogc:def:crs:OGC:1.3:CRS84", "urn:ogc:def:crs:OGC::CRS84", "OGC:CRS84");

  private final Faults faults;
  private final JsonObject root;
  private final List<NamedOutline> outlines = new ArrayList<>();

  private GeoJsonFile(SourceText source) {
    faults = new Faults(source.name());
    root = JsonObject.root(source, faults);
  }

  /**
   * Reads the outlines of a file.
   *
   * @throws InputException with one sentence for each fault
   */
  public static List<NamedOutline> read(Path file) {
    return read(SourceText.read(file, LIMIT_BYTES));
  }

  /**
   * Reads the outlines of a text.
   *
   * @throws InputException with one sentence for each fault
   */
  public static List<NamedOutline> read(SourceText source) {
    return new GeoJsonFile(source).outlines();
  }

  /**
   * Reads the one outline of a text.
   *
   * @throws InputException with one sentence for each fault, and when there are several outlines
   */
  public static NamedOutline readOne(SourceText source) {
    List<NamedOutline> all = read(source);
    if (all.size() > 1) {
      throw new InputException(
          "%s: it holds %d outlines; give a file with one.".formatted(source.name(), all.size()));
    }
    return all.get(0);
  }

  /**
   * Reads the Polygon, MultiPolygon or Feature that is an object of a larger document, or reports
   * its faults and returns null.
   *
   * @param anchor of the grid on which it is laid when it lies near it, or null for its own
   */
  public static @Nullable Outline readPart(JsonObject json, @Nullable Anchor anchor) {
    String type = type(json, List.of("Polygon", "MultiPolygon", FEATURE));
    if (!type.equals(FEATURE)) {
      return type.isEmpty() ? null : GeoJsonGeometry.read(json, anchor);
    }
    JsonObject geometry = geometry(json);
    if (geometry == null) {
      return null;
    }
    Anchor own = anchor(properties(json));
    return GeoJsonGeometry.read(geometry, anchor == null ? own : anchor);
  }

  private List<NamedOutline> outlines() {
    String type = type(root, TYPES);
    if (type.equals("FeatureCollection")) {
      collection();
    } else if (type.equals(FEATURE)) {
      feature(root);
    } else if (!type.isEmpty()) {
      keep(null, GeoJsonGeometry.read(root, null));
    }
    faults.throwIfAny();
    return List.copyOf(outlines);
  }

  /** The type when it is one of those that fit here, else empty after reporting it. */
  private static String type(JsonObject object, List<String> fit) {
    refuseOtherSystem(object);
    String type = object.text("type");
    if (type == null) {
      if (!object.has("type")) {
        object.missing("type", String.join(" or ", fit));
      }
      return "";
    }
    if (!fit.contains(type)) {
      object.fault(
          "type",
          "%s is no outline; %s".formatted(Faults.quoted(type), NearestName.advice(type, fit)));
      return "";
    }
    return type;
  }

  private static void refuseOtherSystem(JsonObject object) {
    if (!object.has("crs") || !object.holdsObject("crs")) {
      return;
    }
    JsonObject crs = object.object("crs");
    JsonObject properties = crs.holdsObject("properties") ? crs.object("properties") : crs;
    JsonValue name = properties.has("name") ? properties.take("name") : null;
    if (name == null || !SAME_SYSTEM.contains(String.valueOf(name.content()))) {
      object.fault(
          "crs",
          "another coordinate system is named; GeoJSON gives WGS84 longitude and latitude:"
              + " convert the file to them.");
    }
  }

  private void collection() {
    List<JsonObject> features = root.objects("features");
    if (features.size() > MOST_FEATURES) {
      root.fault(
          "features",
          "there are %d; a file may have up to %d.".formatted(features.size(), MOST_FEATURES));
      return;
    }
    if (features.isEmpty() && faults.none()) {
      root.fault("features", "there are none; give a feature for each outline.");
    }
    for (JsonObject feature : features) {
      if (!type(feature, List.of(FEATURE)).isEmpty()) {
        feature(feature);
      }
    }
  }

  private void feature(JsonObject feature) {
    JsonObject geometry = geometry(feature);
    if (geometry != null) {
      Map<String, JsonValue> properties = properties(feature);
      keep(name(properties), GeoJsonGeometry.read(geometry, anchor(properties)));
    }
  }

  /** The geometry of a feature when it may be an outline, else null after reporting it. */
  private static @Nullable JsonObject geometry(JsonObject feature) {
    if (!feature.holdsObject("geometry")) {
      feature.fault("geometry", "there is no geometry; give a Polygon or a MultiPolygon.");
      return null;
    }
    JsonObject geometry = feature.object("geometry");
    return type(geometry, GEOMETRIES).isEmpty() ? null : geometry;
  }

  /** Whatever a file says of a feature; it may say anything, or null. */
  private static Map<String, JsonValue> properties(JsonObject feature) {
    JsonValue value = feature.holdsObject("properties") ? feature.take("properties") : null;
    Map<String, JsonValue> members = value == null ? null : value.members();
    return members == null ? Map.of() : members;
  }

  private void keep(@Nullable String name, @Nullable Outline outline) {
    if (outline != null) {
      outlines.add(new NamedOutline(name, outline));
    }
  }

  private static @Nullable String name(Map<String, JsonValue> properties) {
    JsonValue name = properties.get(GeoJsonText.NAME);
    return name != null && name.content() instanceof String text && !text.isBlank()
        ? text.strip()
        : null;
  }

  /** The anchor that we write ourselves, so that an outline comes back on its own grid. */
  private static @Nullable Anchor anchor(Map<String, JsonValue> properties) {
    double longitude = number(properties.get(GeoJsonText.ANCHOR_LONGITUDE));
    double latitude = number(properties.get(GeoJsonText.ANCHOR_LATITUDE));
    return Anchor.isFit(longitude, latitude) ? new Anchor(longitude, latitude) : null;
  }

  private static double number(@Nullable JsonValue value) {
    return value != null && value.content() instanceof Double number ? number : Double.NaN;
  }
}
