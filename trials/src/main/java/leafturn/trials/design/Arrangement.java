package leafturn.trials.design;

import java.util.List;

/**
 * How treatments come to plots.
 *
 * @param design the kind of layout
 * @param blocks number of blocks of the whole trial (paired strips: pairs on each lawn; split
 *     yards: the lawns; Latin square: the treatments; listed: the lawns unless given)
 * @param sides how the halves of split yards are given out
 * @param allowedLayouts of a restricted randomisation: for each layout a treatment for every plot,
 *     in the order of lawns and, on a lawn, of plots; else none
 * @param plots how large plots are and what is left around them
 */
public record Arrangement(
    Design design, int blocks, Sides sides, List<List<String>> allowedLayouts, PlotRule plots) {
  /** Most blocks, and most pairs of strips on a lawn. */
  public static final int MOST_BLOCKS = 100;

  /** Most layouts in a list. */
  public static final int MOST_LAYOUTS = 20_000;

  /** How the halves of split yards are given out. */
  public enum Sides {
    /** By a coin for each yard. */
    COIN("coin"),
    /** By chance, each treatment equally often on each side; in an odd number, but for one. */
    BALANCED("balanced");

    private final String word;

    Sides(String word) {
      this.word = word;
    }

    /** The word in a plan. */
    public String word() {
      return word;
    }
  }

  public Arrangement {
    allowedLayouts = allowedLayouts.stream().map(List::copyOf).toList();
  }
}
