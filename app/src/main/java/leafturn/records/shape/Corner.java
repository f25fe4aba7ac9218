package leafturn.records.shape;

import com.fasterxml.jackson.annotation.JsonFormat;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import leafturn.records.Numbers;

/**
 * A corner of an outline on its plain grid, kept to the millimetre. Written in JSON as {@code [x,
 * y]}.
 *
 * @param xM m to the east of the grid's origin, -10,000 to 10,000
 * @param yM m to the north of it, -10,000 to 10,000
 */
@JsonFormat(shape = JsonFormat.Shape.ARRAY)
@JsonPropertyOrder({"xM", "yM"})
public record Corner(double xM, double yM) {
  /** How far from the origin a corner may lie, m. */
  public static final double FARTHEST_M = 10_000;

  private static final double MM_PER_M = 1000;

  /**
   * @throws IllegalArgumentException when it lies too far away or nowhere
   */
  public Corner {
    if (!isNear(xM) || !isNear(yM)) {
      throw new IllegalArgumentException("no corner can lie at x %s, y %s".formatted(xM, yM));
    }
    xM = toMillimetre(xM);
    yM = toMillimetre(yM);
  }

  /** True for a coordinate that a corner may have. */
  static boolean isNear(double coordinateM) {
    return Math.abs(coordinateM) <= FARTHEST_M;
  }

  /** Adding zero turns a negative zero into a plain one, so that equal places are equal. */
  private static double toMillimetre(double coordinateM) {
    return Math.rint(coordinateM * MM_PER_M) / MM_PER_M + 0.0;
  }

  /** Straight distance to another corner, m. */
  public double distanceM(Corner other) {
    return Math.hypot(xM - other.xM, yM - other.yM);
  }

  /** The place in words: "x 3.5, y 2". */
  String words() {
    return "x %s, y %s".formatted(Numbers.plain(xM), Numbers.plain(yM));
  }
}
