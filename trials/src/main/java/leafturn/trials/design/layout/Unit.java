package leafturn.trials.design.layout;

import org.jspecify.annotations.Nullable;

/**
 * A plot before it has a place: which treatment the plot at this position of a block gets.
 *
 * @param lawn index of its lawn
 * @param block from 1, over all lawns
 * @param row from 1, along the passes
 * @param column from 1, across them
 * @param arm name of its treatment
 * @param secondArm level of the second factor, or null where there is none
 */
public record Unit(
    int lawn, int block, int row, int column, String arm, @Nullable String secondArm) {
  /** Its treatment in words, both factors where there are two. */
  public String treatment() {
    return secondArm == null ? arm : arm + ", " + secondArm;
  }
}
