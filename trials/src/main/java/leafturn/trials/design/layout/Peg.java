package leafturn.trials.design.layout;

import java.util.List;

/**
 * A corner of plots to be found on the ground.
 *
 * @param number from 1 on its lawn
 * @param plots codes of the plots that meet here
 * @param xM m to the east on the lawn's grid
 * @param yM m to the north
 * @param fromAM from the first fixed corner, m
 * @param fromBM from the second, m
 * @param left whether it lies to the left of somebody who looks from the first to the second
 */
public record Peg(
    int number,
    List<String> plots,
    double xM,
    double yM,
    double fromAM,
    double fromBM,
    boolean left) {
  public Peg {
    plots = List.copyOf(plots);
  }
}
