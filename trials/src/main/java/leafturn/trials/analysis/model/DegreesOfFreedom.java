package leafturn.trials.analysis.model;

/** How the denominator degrees of freedom are found. */
public enum DegreesOfFreedom {
  KENWARD_ROGER("kenward-roger"),
  SATTERTHWAITE("satterthwaite"),
  /** By containment: those of the stratum in which the effect is judged. */
  DESIGN("design");

  private final String word;

  DegreesOfFreedom(String word) {
    this.word = word;
  }

  /** The word in a model file. */
  public String word() {
    return word;
  }
}
