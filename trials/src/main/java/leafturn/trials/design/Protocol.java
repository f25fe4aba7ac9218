package leafturn.trials.design;

import java.time.DayOfWeek;
import leafturn.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * What is kept the same for all plots, so that they differ by their treatment only.
 *
 * @param mowingDay the one day on which all plots of a lawn are mown, or null where it is settled
 *     from week to week
 * @param heightMm the one cut height, mm, 5 to 200, or null when not settled
 * @param bothHalvesSameDay whether the plots of a block are mown on the same day
 * @param collectedFirst whether collected plots are mown first, before clippings lie about
 * @param deckCleaned whether the deck is cleaned and the bag emptied between plots
 * @param ratersBlind whether those who rate do not know the treatment
 * @param feed whether all treatments are fed alike
 */
public record Protocol(
    @Nullable DayOfWeek mowingDay,
    @Nullable Double heightMm,
    boolean bothHalvesSameDay,
    boolean collectedFirst,
    boolean deckCleaned,
    boolean ratersBlind,
    Feed feed) {
  /** Cut height. */
  public static final Range HEIGHT_MM = new Range("heightMm", 5, 200, "mm");

  /** Whether treatments are fed alike. */
  public enum Feed {
    EQUAL("equal"),
    /** Deliberately less where clippings are returned. */
    REDUCED("reduced");

    private final String word;

    Feed(String word) {
      this.word = word;
    }

    /** The word in a plan. */
    public String word() {
      return word;
    }
  }

  /**
   * @throws IllegalArgumentException when the height is out of range
   */
  public Protocol {
    if (heightMm != null) {
      HEIGHT_MM.checked(heightMm);
    }
  }
}
