package leafturn.trials.design.layout;

import leafturn.trials.design.ground.FixedCorners;
import org.locationtech.jts.geom.Coordinate;

/**
 * A place that is found on the ground with two tapes. The tapes are told to the centimetre, and
 * rounded here alone, so that page, paper, map and files agree.
 *
 * @param xM m to the east on the lawn's grid
 * @param yM m to the north
 * @param fromAM from the first fixed corner, m, to the centimetre
 * @param fromBM from the second
 * @param left whether it lies to the left of somebody who looks from the first to the second
 */
public record TapedPlace(double xM, double yM, double fromAM, double fromBM, boolean left) {
  private static final double STEPS_PER_M = 100;

  static TapedPlace of(FixedCorners fixed, Coordinate place) {
    return new TapedPlace(
        place.x,
        place.y,
        toCentimetre(place.distance(fixed.a())),
        toCentimetre(place.distance(fixed.b())),
        fixed.isLeft(place));
  }

  private static double toCentimetre(double distanceM) {
    return Math.rint(distanceM * STEPS_PER_M) / STEPS_PER_M;
  }

  /** The side on which it lies: "left" or "right". */
  public String side() {
    return left ? "left" : "right";
  }
}
