package leafturn.advice.call;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is special about a lawn's ground, mower and stand.
 *
 * @param slopePercent slope, rise over run, %, 0 to 100; NaN when not known
 * @param deck where the mower puts the clippings
 * @param annualBluegrass whether annual bluegrass grows there and is wanted
 * @param newlySeeded true for an area at its first cut
 * @param sown the day it was sown, or null where nobody said; never of an area past its first cut
 */
public record Place(
    double slopePercent,
    Deck deck,
    AnnualBluegrass annualBluegrass,
    boolean newlySeeded,
    @Nullable LocalDate sown) {
  /** A place nobody has described. */
  public static final Place UNKNOWN =
      new Place(Double.NaN, Deck.NOT_KNOWN, AnnualBluegrass.NOT_KNOWN, false);

  private static final double STEEPEST_PERCENT = 100;

  public Place {
    if (slopePercent < 0 || slopePercent > STEEPEST_PERCENT) {
      throw new IllegalArgumentException(
          "a slope must lie from 0 to 100 %, but is " + slopePercent);
    }
  }

  /** A place of which nobody said when it was sown. */
  public Place(
      double slopePercent, Deck deck, AnnualBluegrass annualBluegrass, boolean newlySeeded) {
    this(slopePercent, deck, annualBluegrass, newlySeeded, null);
  }

  /** The same place, sown on a day and not mown since. */
  public Place sownOn(LocalDate day) {
    return new Place(slopePercent, deck, annualBluegrass, true, day);
  }

  /** Where a mower puts the clippings. */
  public enum Deck {
    NOT_KNOWN,
    MULCHING,
    SIDE_DISCHARGE,
    REAR_DISCHARGE,
    REAR_BAG,
    REEL,
    ROBOT
  }

  /** Whether annual bluegrass grows in a lawn. */
  public enum AnnualBluegrass {
    NOT_KNOWN,
    NONE,
    /** There, and nobody minds. */
    THERE,
    UNWANTED
  }
}
