package leafturn.web;

import leafturn.records.sheet.TrialSheet;

/** How often a layout was drawn, in a sentence. */
final class DrawWords {
  private DrawWords() {}

  /**
   * The sentence.
   *
   * @param draws how many seeds the plan has had up to when it was frozen, 1 or more
   */
  static String of(TrialSheet trial, int draws) {
    if (trial.past() != null) {
      return "This trial came from another book; how often its layout was drawn there is not known.";
    }
    boolean frozen = trial.frozen() != null;
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
