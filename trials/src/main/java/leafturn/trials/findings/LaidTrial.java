package leafturn.trials.findings;

import java.util.List;

/**
 * How a planned trial lies on the ground.
 *
 * @param design how plots lie in units
 * @param unitWord what a unit is called, as block
 * @param plots all of them
 * @param randomisation how treatments came to them
 */
public record LaidTrial(
    TrialFacts.Design design,
    String unitWord,
    List<Plot> plots,
    TrialFacts.Randomisation randomisation) {
  public LaidTrial {
    plots = List.copyOf(plots);
  }
}
