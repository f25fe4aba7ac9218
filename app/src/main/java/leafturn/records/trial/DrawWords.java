package leafturn.records.trial;

import org.jspecify.annotations.Nullable;

/** How often a layout was drawn, in a sentence. */
public final class DrawWords {
  private DrawWords() {}

  /**
   * The sentence.
   *
   * @param draws how many seeds the plan has had up to when it was frozen, 1 or more; null where
   *     nobody knows
   */
  public static String of(@Nullable Integer draws, boolean frozen) {
    if (draws == null) {
      return "How often the layout was drawn before the plan was frozen is not known here.";
    }
    if (draws < 2) {
      return frozen
          ? "The layout was drawn once before the plan was frozen."
          : "The layout was drawn once so far.";
    }
    return ("The layout was drawn %d times %s, each time from another seed; one chosen among them is"
            + " not left to chance.")
        .formatted(draws, frozen ? "before the plan was frozen" : "so far");
  }
}
