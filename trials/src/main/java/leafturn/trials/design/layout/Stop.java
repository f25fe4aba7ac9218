package leafturn.trials.design.layout;

import java.time.LocalDate;
import java.util.List;

/**
 * A block on the walk of a date.
 *
 * @param date on which
 * @param lawn index of the lawn
 * @param block its number
 * @param plots codes in the order in which they are rated and sampled, by chance
 */
public record Stop(LocalDate date, int lawn, int block, List<String> plots) {
  public Stop {
    plots = List.copyOf(plots);
  }
}
