package leafturn.web;

import leafturn.advice.call.PossibleSeasons;

/** Says over what weather a spread is taken, and how much its ends can be worth. */
final class SeasonsWords {
  /** Below this many seasons a 10th or 90th percentile lies between the outermost two. */
  private static final int ENOUGH = 10;

  private SeasonsWords() {}

  static String howToRead(PossibleSeasons seasons) {
    String reading =
        "The first figure is the middle one of "
            + seasons.count()
            + " possible seasons, made from "
            + seasons.madeFrom()
            + ". ";
    return seasons.count() < ENOUGH
        ? reading
            + "The range reaches from the 10th to the 90th percentile, which so few seasons show"
            + " only roughly."
        : reading + "Eight out of ten of them lie within the range.";
  }
}
