package leafturn.trials.design.layout;

import java.util.List;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.ground.FixedCorners;
import leafturn.trials.design.ground.Frame;
import leafturn.trials.design.ground.Surface;

/**
 * A lawn with its plots.
 *
 * @param lawn as planned
 * @param surface what of it is mown and what is measured
 * @param frame whose passes run along the plots
 * @param fixed two corners from which places are measured
 * @param plots on it, in order
 * @param pegs corners of its plots to be found on the ground
 * @param dropped plots that would lie there but cannot be used
 * @param notes what to know about it, in sentences
 */
public record LaidLawn(
    TrialLawn lawn,
    Surface surface,
    Frame frame,
    FixedCorners fixed,
    List<LaidPlot> plots,
    List<Peg> pegs,
    List<DroppedPlot> dropped,
    List<String> notes) {
  public LaidLawn {
    plots = List.copyOf(plots);
    pegs = List.copyOf(pegs);
    dropped = List.copyOf(dropped);
    notes = List.copyOf(notes);
  }
}
