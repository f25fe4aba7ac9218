package leafturn.trials.design.layout;

import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/** Directions in words. */
public final class Compass {
  private static final String[] NAMES = {
    "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
  };
  private static final double TURN_DEG = 360;

  private Compass() {}

  /** The name of the nearest of eight directions. */
  public static String name(double bearingDeg) {
    double turned = ((bearingDeg % TURN_DEG) + TURN_DEG) % TURN_DEG;
    return NAMES[(int) Math.round(turned / TURN_DEG * NAMES.length) % NAMES.length];
  }

  /** The direction in which one place lies from another. */
  static String from(Coordinate place, Coordinate other) {
    return name(Math.toDegrees(Math.atan2(other.x - place.x, other.y - place.y)));
  }

  /** Where a half lies: "western". */
  static String side(double bearingDeg) {
    return name(bearingDeg) + "ern";
  }

  /** A direction with its name: "85° (east)". */
  public static String words(double bearingDeg) {
    double turned = ((bearingDeg % TURN_DEG) + TURN_DEG) % TURN_DEG;
    double shown = Math.rint(10 * turned) / 10 % TURN_DEG;
    return String.format(
        Locale.ROOT, shown == Math.rint(shown) ? "%.0f° (%s)" : "%.1f° (%s)", shown, name(turned));
  }
}
