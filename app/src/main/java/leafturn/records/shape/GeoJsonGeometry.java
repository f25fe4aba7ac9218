package leafturn.records.shape;

import java.util.ArrayList;
import java.util.List;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.Numbers;
import leafturn.records.shape.LocalGrid.LonLat;
import org.jspecify.annotations.Nullable;

/** Reads the positions of a Polygon or MultiPolygon and lays them on a plain grid. */
final class GeoJsonGeometry {
  /** Wider than any outline, and still well within what the projection is made for, degrees. */
  private static final double WIDEST_DEG = 0.2;

  /** Anchors are rounded down to this, about a decimetre. */
  private static final double ANCHOR_STEPS_PER_DEG = 1e6;

  private final JsonObject geometry;

  /** Of each piece, of each of its rings: the value it was read from and the positions. */
  private final List<List<EarthRing>> pieces = new ArrayList<>();

  private boolean faulty;

  private record EarthRing(JsonValue value, List<LonLat> positions) {}

  private GeoJsonGeometry(JsonObject geometry) {
    this.geometry = geometry;
  }

  /**
   * The outline, or null when a fault was reported.
   *
   * @param anchor used when the outline lies near it; else its own south-western corner is
   */
  static @Nullable Outline read(JsonObject geometry, @Nullable Anchor anchor) {
    return new GeoJsonGeometry(geometry).outline(anchor);
  }

  private @Nullable Outline outline(@Nullable Anchor given) {
    JsonValue coordinates = geometry.take("coordinates");
    if (coordinates == null) {
      if (!geometry.has("coordinates")) {
        geometry.missing("coordinates", "the positions of the outline");
      }
      return null;
    }
    if ("Polygon".equals(geometry.text("type"))) {
      pieces.add(rings(coordinates));
    } else {
      list(coordinates).forEach(piece -> pieces.add(rings(piece)));
    }
    List<LonLat> all =
        pieces.stream().flatMap(List::stream).flatMap(ring -> ring.positions().stream()).toList();
    if (faulty || !all.isEmpty() && isTooWide(all)) {
      return null;
    }
    return onGrid(all.isEmpty() ? new Anchor(0, 0) : anchor(all, given));
  }

  private List<EarthRing> rings(JsonValue piece) {
    List<EarthRing> rings = new ArrayList<>();
    for (JsonValue ring : list(piece)) {
      List<LonLat> positions = new ArrayList<>();
      for (JsonValue position : list(ring)) {
        LonLat place = position(position);
        if (place != null) {
          positions.add(place);
        }
      }
      rings.add(new EarthRing(ring, positions));
    }
    if (rings.isEmpty() && !faulty) {
      fault(piece, "there is no ring; give the edge as a list of positions.");
    }
    return rings;
  }

  private List<JsonValue> list(JsonValue value) {
    List<JsonValue> items = value.items();
    if (items == null) {
      fault(value, value.shown() + " is not a list; give one in square brackets.");
      return List.of();
    }
    return items;
  }

  private @Nullable LonLat position(JsonValue value) {
    List<JsonValue> numbers = value.items();
    if (numbers == null
        || numbers.size() < 2
        || !(numbers.get(0).content() instanceof Double longitude)
        || !(numbers.get(1).content() instanceof Double latitude)
        || !Double.isFinite(longitude)
        || !Double.isFinite(latitude)) {
      fault(value, value.shown() + " is no position; give [longitude, latitude] in degrees.");
      return null;
    }
    String wrong = wrong(longitude, latitude);
    if (wrong != null) {
      fault(value, wrong);
      return null;
    }
    return new LonLat(longitude, latitude);
  }

  private static @Nullable String wrong(double longitude, double latitude) {
    String pair = "[%s, %s]".formatted(Numbers.plain(longitude), Numbers.plain(latitude));
    if (Math.abs(longitude) > 180 || Math.abs(latitude) > 180) {
      return pair + " are no degrees; GeoJSON gives WGS84 longitude and latitude: convert to them.";
    }
    if (Math.abs(latitude) > 90) {
      return "latitude %s in %s is out of range; GeoJSON gives longitude first%s"
          .formatted(
              Numbers.plain(latitude),
              pair,
              Anchor.isFit(latitude, longitude)
                  ? ", so the two seem to be swapped."
                  : ", then a latitude from -85 to 85.");
    }
    return Math.abs(latitude) > Anchor.FARTHEST_LATITUDE_DEG
        ? "latitude %s in %s is too near to a pole; give one from -85 to 85."
            .formatted(Numbers.plain(latitude), pair)
        : null;
  }

  private boolean isTooWide(List<LonLat> all) {
    double west = all.stream().mapToDouble(LonLat::longitudeDeg).min().orElseThrow();
    double east = all.stream().mapToDouble(LonLat::longitudeDeg).max().orElseThrow();
    double south = all.stream().mapToDouble(LonLat::latitudeDeg).min().orElseThrow();
    double north = all.stream().mapToDouble(LonLat::latitudeDeg).max().orElseThrow();
    double shrink = Math.cos(Math.toRadians((south + north) / 2));
    if (east - west > 180) {
      geometry.fault(
          "coordinates",
          "it reaches from longitude %s to %s; an outline across the 180th meridian cannot be read,"
                  .formatted(Numbers.plain(west), Numbers.plain(east))
              + " so check the signs.");
      return true;
    }
    if (north - south > WIDEST_DEG || (east - west) * shrink > WIDEST_DEG) {
      tooWide();
      return true;
    }
    return false;
  }

  private void tooWide() {
    geometry.fault(
        "coordinates",
        "it reaches over more than 10 km; an outline is smaller, so check for a wrong position.");
  }

  private static Anchor anchor(List<LonLat> all, @Nullable Anchor given) {
    if (given != null && isNear(all, given)) {
      return given;
    }
    return new Anchor(
        roundedDown(all.stream().mapToDouble(LonLat::longitudeDeg).min().orElseThrow()),
        roundedDown(all.stream().mapToDouble(LonLat::latitudeDeg).min().orElseThrow()));
  }

  private static boolean isNear(List<LonLat> all, Anchor anchor) {
    LonLat first = all.get(0);
    double shrink = Math.cos(Math.toRadians(first.latitudeDeg()));
    return Math.abs(first.latitudeDeg() - anchor.latitudeDeg()) < WIDEST_DEG
        && Math.abs(first.longitudeDeg() - anchor.longitudeDeg()) * shrink < WIDEST_DEG;
  }

  private static double roundedDown(double degrees) {
    return Math.floor(degrees * ANCHOR_STEPS_PER_DEG) / ANCHOR_STEPS_PER_DEG;
  }

  private @Nullable Outline onGrid(Anchor anchor) {
    LocalGrid grid = new LocalGrid(anchor);
    List<Patch> patches = new ArrayList<>();
    for (List<EarthRing> piece : pieces) {
      List<Ring> rings = new ArrayList<>();
      for (EarthRing earth : piece) {
        Ring ring = ring(earth, grid);
        if (ring == null) {
          tooWide();
          return null;
        }
        rings.add(ring);
      }
      patches.add(new Patch(rings.get(0), rings.subList(1, rings.size())));
    }
    List<OutlineCheck.Finding> findings =
        OutlineCheck.of(patches, corner -> grid.onEarth(corner).words());
    findings.forEach(this::report);
    return findings.isEmpty() ? new Outline(patches, anchor) : null;
  }

  /** The ring on the grid, or null when a corner of it lies too far away. */
  private static @Nullable Ring ring(EarthRing earth, LocalGrid grid) {
    List<Corner> corners = new ArrayList<>();
    for (LonLat place : earth.positions()) {
      double[] at = grid.onGrid(place);
      if (!Corner.isNear(at[0]) || !Corner.isNear(at[1])) {
        return null;
      }
      corners.add(new Corner(at[0], at[1]));
    }
    return new Ring(corners);
  }

  private void report(OutlineCheck.Finding finding) {
    if (finding.patch() == OutlineCheck.WHOLE || finding.ring() == OutlineCheck.WHOLE) {
      geometry.fault("coordinates", finding.sentence());
    } else {
      geometry.fault(pieces.get(finding.patch()).get(finding.ring()).value(), finding.sentence());
    }
  }

  private void fault(JsonValue value, String sentence) {
    geometry.fault(value, sentence);
    faulty = true;
  }
}
