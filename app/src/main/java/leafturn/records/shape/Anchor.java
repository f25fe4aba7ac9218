package leafturn.records.shape;

import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * Where on the earth the origin of an outline's plain grid lies, WGS84. The grid is the transverse
 * Mercator projection about this point, see {@link LocalGrid}. Kept to nine decimals.
 *
 * @param longitudeDeg degrees east, -180 to 180
 * @param latitudeDeg degrees north, -85 to 85
 */
public record Anchor(double longitudeDeg, double latitudeDeg) {
  /** Farthest longitude, degrees. */
  static final double FARTHEST_LONGITUDE_DEG = 180;

  /** Farthest latitude, degrees: no grass is mown nearer to a pole. */
  static final double FARTHEST_LATITUDE_DEG = 85;

  private static final double STEPS_PER_DEG = 1e9;

  /** Mean radius of the earth, km; half a per cent is near enough for telling places apart. */
  private static final double EARTH_KM = 6371;

  /**
   * @throws IllegalArgumentException when there is no such place or no lawn can be there
   */
  public Anchor {
    if (!isFit(longitudeDeg, latitudeDeg)) {
      throw new IllegalArgumentException(
          "no grid can have its origin at longitude %s, latitude %s"
              .formatted(longitudeDeg, latitudeDeg));
    }
    longitudeDeg = rounded(longitudeDeg);
    latitudeDeg = rounded(latitudeDeg);
  }

  /** Adding zero turns a negative zero into a plain one. */
  private static double rounded(double degrees) {
    return Math.rint(degrees * STEPS_PER_DEG) / STEPS_PER_DEG + 0.0;
  }

  /** True for a place at which a grid may have its origin. */
  public static boolean isFit(double longitudeDeg, double latitudeDeg) {
    return Math.abs(longitudeDeg) <= FARTHEST_LONGITUDE_DEG
        && Math.abs(latitudeDeg) <= FARTHEST_LATITUDE_DEG;
  }

  /**
   * Great-circle distance to another place, km; haversine formula on a sphere.
   *
   * @param longitude degrees east
   * @param latitude degrees north, -90 to 90
   */
  public double distanceKm(double longitude, double latitude) {
    return distanceKm(longitudeDeg, latitudeDeg, longitude, latitude);
  }

  /** As {@link #distanceKm(double, double)}, of any two places; degrees east and north. */
  public static double distanceKm(
      double longitudeDeg, double latitudeDeg, double longitude, double latitude) {
    double north = Math.sin(Math.toRadians(latitude - latitudeDeg) / 2);
    double east = Math.sin(Math.toRadians(longitude - longitudeDeg) / 2);
    double shrink = Math.cos(Math.toRadians(latitude)) * Math.cos(Math.toRadians(latitudeDeg));
    double half = Math.sqrt(north * north + shrink * east * east);
    return 2 * EARTH_KM * Math.asin(Math.min(1, half));
  }

  /** Reads the object in a field, or null when it is missing or wrong. */
  static @Nullable Anchor read(JsonObject json, String name) {
    if (!json.has(name)) {
      return null;
    }
    JsonObject anchor = json.object(name);
    double longitude =
        anchor.requiredNumber(
            "longitudeDeg", -FARTHEST_LONGITUDE_DEG, FARTHEST_LONGITUDE_DEG, "° east");
    double latitude =
        anchor.requiredNumber(
            "latitudeDeg", -FARTHEST_LATITUDE_DEG, FARTHEST_LATITUDE_DEG, "° north");
    anchor.refuseOthers();
    return Double.isNaN(longitude) || Double.isNaN(latitude)
        ? null
        : new Anchor(longitude, latitude);
  }
}
