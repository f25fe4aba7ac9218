package leafturn.trials.design;

import leafturn.quantity.Range;

/**
 * The mower of a lawn, as far as plots depend on it.
 *
 * @param deckWidthMm width of a pass, mm, 200 to 5000
 * @param discharge where clippings leave it
 * @param assumed whether nobody has said where they leave it
 */
public record TrialMower(double deckWidthMm, Discharge discharge, boolean assumed) {
  /** Width of a pass. */
  public static final Range DECK_WIDTH_MM = new Range("deckWidthMm", 200, 5000, "mm");

  private static final double MM_PER_M = 1000;

  /** Where clippings leave a mower, seen by whoever drives it. */
  public enum Discharge {
    LEFT("left"),
    RIGHT("right"),
    REAR("rear"),
    /** Into a bag, or nowhere before they are chopped. */
    NONE("none");

    private final String word;

    Discharge(String word) {
      this.word = word;
    }

    /** The word in a plan. */
    public String word() {
      return word;
    }

    /** Whether clippings can be thrown over to a neighbouring plot. */
    public boolean isSideways() {
      return this == LEFT || this == RIGHT;
    }
  }

  /**
   * @throws IllegalArgumentException when the width is out of range
   */
  public TrialMower {
    DECK_WIDTH_MM.checked(deckWidthMm);
  }

  /** A mower of which it is known where clippings leave it. */
  public TrialMower(double deckWidthMm, Discharge discharge) {
    this(deckWidthMm, discharge, false);
  }

  /** Width of a pass, m. */
  public double passM() {
    return deckWidthMm / MM_PER_M;
  }
}
