package leafturn.trials.observation;

/**
 * Something that is wrong or risky about a trial's readings, in a plain sentence.
 *
 * @param weight what it means for an analysis
 * @param sentence for people
 */
public record Remark(Weight weight, String sentence) {
  /** What a remark means for an analysis. */
  public enum Weight {
    /** There is no such analysis. */
    REFUSED("No such analysis"),
    /** The analysis stands, its words must say so. */
    WARNING("Take care"),
    /** Worth knowing. */
    NOTE("To know");

    private final String words;

    Weight(String words) {
      this.words = words;
    }

    /** What it means, for people. */
    public String words() {
      return words;
    }
  }

  static Remark refused(String pattern, Object... values) {
    return new Remark(Weight.REFUSED, pattern.formatted(values));
  }

  static Remark warning(String pattern, Object... values) {
    return new Remark(Weight.WARNING, pattern.formatted(values));
  }

  static Remark note(String pattern, Object... values) {
    return new Remark(Weight.NOTE, pattern.formatted(values));
  }
}
