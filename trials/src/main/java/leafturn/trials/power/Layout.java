package leafturn.trials.power;

/** How arms lie on the ground, and what counts as one unit more. */
public enum Layout {
  SPLIT_YARD("split-yard", "yard", 2),
  INDEPENDENT_GROUPS("independent-groups", "plot per arm", 2),
  RANDOMISED_BLOCK("randomised-block", "block", 2),
  PAIRED_STRIPS("paired-strips", "pair of strips", 2),
  LISTED("listed", "lawn", 1),
  LATIN_SQUARE("latin-square", "square", 1),
  SPLIT_PLOT("split-plot", "block", 2),
  STRIP_PLOT("strip-plot", "block", 2),
  YARDS_AND_YEARS("yards-and-years", "yard", 2);

  private final String word;
  private final String unit;
  private final int fewest;

  Layout(String word, String unit, int fewest) {
    this.word = word;
    this.unit = unit;
    this.fewest = fewest;
  }

  /** The word in files. */
  public String word() {
    return word;
  }

  /** What there can be more of: one of them. */
  public String unit() {
    return unit;
  }

  /** Several of them. */
  public String units() {
    return switch (this) {
      case INDEPENDENT_GROUPS -> "plots per arm";
      case PAIRED_STRIPS -> "pairs of strips";
      default -> unit + "s";
    };
  }

  /** Fewer leave nothing to judge a difference by. */
  public int fewest() {
    return fewest;
  }

  /** Whether a second factor lies within or across the plots of the first. */
  public boolean hasSecondFactor() {
    return this == SPLIT_PLOT || this == STRIP_PLOT;
  }

  /** Whether each unit holds two plots, one of each arm. */
  public boolean isOfPairs() {
    return this == SPLIT_YARD || this == PAIRED_STRIPS || this == YARDS_AND_YEARS;
  }

  /** Whether a trial has a number of its own on each lawn: of pairs, or of plots of each arm. */
  public boolean hasNumberPerLawn() {
    return this == PAIRED_STRIPS || this == LISTED;
  }

  /** Whether the variance of a difference has a formula; if not, trials are simulated. */
  public boolean hasFormula() {
    return this != YARDS_AND_YEARS;
  }
}
