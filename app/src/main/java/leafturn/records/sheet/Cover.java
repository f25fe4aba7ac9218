package leafturn.records.sheet;

import java.util.stream.Stream;
import leafturn.records.JsonObject;

/**
 * A point count: how many points of a frame or a walk fell on what.
 *
 * @param grass points on grass, 0 to 10,000
 * @param weed points on weeds
 * @param moss points on moss
 * @param bare points on bare ground
 */
public record Cover(int grass, int weed, int moss, int bare) {
  private static final int MOST_POINTS = 10_000;

  static Cover read(JsonObject section) {
    Cover cover =
        new Cover(
            count(section, "grass"),
            count(section, "weed"),
            count(section, "moss"),
            count(section, "bare"));
    section.refuseOthers();
    if (!given(section)) {
      section.missing("grass", "the number of points that fell on grass");
    } else if (cover.points() == 0) {
      section.fault("grass", "no point is counted; leave cover out, or count at least one.");
    }
    return cover;
  }

  private static boolean given(JsonObject section) {
    return Stream.of("grass", "weed", "moss", "bare").anyMatch(section::has);
  }

  private static int count(JsonObject section, String name) {
    Integer points = section.wholeNumber(name, 0, MOST_POINTS, "points");
    return points == null ? 0 : points;
  }

  /** All points. */
  public int points() {
    return grass + weed + moss + bare;
  }

  /** The share under grass. */
  public PointShare grassShare() {
    return PointShare.of(grass, points());
  }

  /** The share under weeds. */
  public PointShare weedShare() {
    return PointShare.of(weed, points());
  }

  /** The share under moss. */
  public PointShare mossShare() {
    return PointShare.of(moss, points());
  }

  /** The bare share. */
  public PointShare bareShare() {
    return PointShare.of(bare, points());
  }
}
