package leafturn.trials.findings;

import org.jspecify.annotations.Nullable;

/**
 * A piece of ground that one treatment was given to.
 *
 * @param code as readings name it
 * @param unit the yard, pair or block it lies in
 * @param arm the treatment
 * @param secondArm of a second factor; null where there is none
 * @param row of a Latin square or strip plot; null elsewhere
 * @param column of a Latin square or strip plot; null elsewhere
 */
public record Plot(
    String code,
    String unit,
    String arm,
    @Nullable String secondArm,
    @Nullable String row,
    @Nullable String column) {

  /** A plot of a design with one factor in units. */
  public static Plot of(String code, String unit, String arm) {
    return new Plot(code, unit, arm, null, null, null);
  }

  /** What it was given, both factors where there are two. */
  String treatment() {
    return secondArm == null ? arm : arm + ", " + secondArm;
  }
}
