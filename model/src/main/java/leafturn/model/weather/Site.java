package leafturn.model.weather;

import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * Where the weather was measured and the lawn lies.
 *
 * @param latitudeDeg degrees north, -90 to 90; south is negative
 * @param elevationM m above sea level, -430 to 5500
 * @param windHeightM height of the wind measurement above ground, m, 0.5 to 100
 * @param longitudeDeg degrees east, -180 to 180, or null
 * @param timeZone IANA time zone, or null
 */
public record Site(
    double latitudeDeg,
    double elevationM,
    double windHeightM,
    @Nullable Double longitudeDeg,
    @Nullable ZoneId timeZone) {
  public Site {
    within("latitudeDeg", latitudeDeg, -90, 90);
    within("elevationM", elevationM, -430, 5500);
    within("windHeightM", windHeightM, 0.5, 100);
    if (longitudeDeg != null) {
      within("longitudeDeg", longitudeDeg, -180, 180);
    }
  }

  /** A site with wind at 2 m and neither longitude nor time zone. */
  public static Site at(double latitudeDeg, double elevationM) {
    return new Site(latitudeDeg, elevationM, 2, null, null);
  }

  private static void within(String name, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          "%s is %s, but must lie from %s to %s".formatted(name, value, low, high));
    }
  }
}
