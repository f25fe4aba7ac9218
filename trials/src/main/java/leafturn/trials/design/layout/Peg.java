package leafturn.trials.design.layout;

import java.util.List;

/**
 * A corner of plots to be found on the ground.
 *
 * @param number from 1 on its lawn
 * @param plots codes of the plots that meet here
 * @param at where it is
 */
public record Peg(int number, List<String> plots, TapedPlace at) {
  public Peg {
    plots = List.copyOf(plots);
  }
}
