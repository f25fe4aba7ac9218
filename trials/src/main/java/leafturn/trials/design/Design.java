package leafturn.trials.design;

/** How treatments are given to plots. */
public enum Design {
  /** Each lawn is halved; chance says which half gets which of two treatments. */
  SPLIT_YARD("split-yard"),
  /** Each treatment once in each block, in random order. */
  RANDOMISED_BLOCK("randomised-block"),
  /** Each treatment once in each row and once in each column. */
  LATIN_SQUARE("latin-square"),
  /** Treatments on whole strips, a second factor on parts of each strip. */
  SPLIT_PLOT("split-plot"),
  /** Treatments on strips one way, a second factor on strips across them. */
  STRIP_PLOT("strip-plot"),
  /** Two treatments side by side on strips of a lawn, four by four as ABBA or BAAB. */
  PAIRED_STRIPS("paired-strips"),
  /** One drawn from a list of allowed layouts. */
  LISTED("listed");

  private final String word;

  Design(String word) {
    this.word = word;
  }

  /** The word in a plan. */
  public String word() {
    return word;
  }

  /** Whether a second factor belongs to it. */
  public boolean hasSecondFactor() {
    return this == SPLIT_PLOT || this == STRIP_PLOT;
  }

  /** Whether its blocks are counted in the plan; else lawns, treatments or the list say so. */
  public boolean countsBlocks() {
    return hasSecondFactor() || this == RANDOMISED_BLOCK || this == PAIRED_STRIPS;
  }
}
