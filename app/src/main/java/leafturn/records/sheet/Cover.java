package leafturn.records.sheet;

import java.util.stream.Stream;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A point count: how many points of a frame or a walk fell on what.
 *
 * @param grass points on grass, 0 to 10,000
 * @param weed points on weeds
 * @param moss points on moss
 * @param bare points on bare ground
 */
public record Cover(int grass, int weed, int moss, int bare) {
  private static final Integer ZERO = 0;
  private static final int MOST_POINTS = 10_000;

  static Cover read(JsonObject section) {
    Integer grass = count(section, "grass");
    Integer weed = count(section, "weed");
    Integer moss = count(section, "moss");
    Integer bare = count(section, "bare");
    // What could not be read was counted all the same.
    boolean readable = grass != null && weed != null && moss != null && bare != null;
    Cover cover = new Cover(or0(grass), or0(weed), or0(moss), or0(bare));
    section.refuseOthers();
    if (!given(section)) {
      section.missing("grass", "the number of points that fell on grass");
    } else if (cover.points() == 0 && readable) {
      section.fault("grass", "no point is counted; leave cover out, or count at least one.");
    }
    return cover;
  }

  private static boolean given(JsonObject section) {
    return Stream.of("grass", "weed", "moss", "bare").anyMatch(section::has);
  }

  /** The points of a kind, 0 where none is told; null after a fault. */
  private static @Nullable Integer count(JsonObject section, String name) {
    return section.has(name) ? section.wholeNumber(name, 0, MOST_POINTS, "points") : ZERO;
  }

  private static int or0(@Nullable Integer points) {
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
