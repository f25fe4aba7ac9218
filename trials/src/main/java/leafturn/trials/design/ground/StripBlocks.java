package leafturn.trials.design.ground;

import java.util.List;

/**
 * Blocks of plots on strips of a lawn.
 *
 * @param frame whose passes run along the strips
 * @param stripM width of a strip, m
 * @param plotM length of a plot, m
 * @param blocks of each block the plots, row by row and from left to right
 * @param dropped plots that would lie between those of the blocks but cannot be used
 * @param unused plots beside the blocks that could not be used either
 * @param spare further blocks that would fit
 */
public record StripBlocks(
    Frame frame,
    double stripM,
    double plotM,
    List<List<Place>> blocks,
    List<Dropped> dropped,
    int unused,
    int spare) {
  /**
   * A plot that cannot be used.
   *
   * @param place what there is of it
   * @param why in words
   */
  public record Dropped(Place place, String why) {}
}
