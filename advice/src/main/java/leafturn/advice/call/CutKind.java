package leafturn.advice.call;

import org.jspecify.annotations.Nullable;

/**
 * What kind of clippings a choice makes, over the possible seasons.
 *
 * @param carbonPerNitrogen C:N of the clippings, or null where nothing is cut
 * @param nitrogenAtFirst what that does to the turf's nitrogen in the first weeks, or null where
 *     nothing is cut
 * @param ligninFraction lignin in dry matter, or null where all cuts are taken to be of one kind
 * @param leafAgeDays mean age of the leaf that is cut, days at 20 °C
 * @param lengthMm length of the pieces, mm
 */
public record CutKind(
    @Nullable Spread carbonPerNitrogen,
    @Nullable NitrogenAtFirst nitrogenAtFirst,
    @Nullable Spread ligninFraction,
    @Nullable Spread leafAgeDays,
    Spread lengthMm) {

  /** What fresh clippings do to the mineral nitrogen of the turf in their first weeks. */
  public enum NitrogenAtFirst {
    /** Microbes leave some over for the grass. */
    FREED,
    /** As much may be freed as tied up: the measured critical C:N differs between studies. */
    EITHER_WAY,
    /** Microbes take some from the soil first, and give it back later. */
    TIED_UP;

    /** The verdict on clippings of a C:N, which is shown and judged in whole numbers. */
    static NitrogenAtFirst of(double exactly, CallRules rules) {
      double carbonPerNitrogen = Math.rint(exactly);
      if (carbonPerNitrogen < rules.threshold(CallRule.NITROGEN_FREED)) {
        return FREED;
      }
      return carbonPerNitrogen > rules.threshold(CallRule.NITROGEN_TIED_UP) ? TIED_UP : EITHER_WAY;
    }
  }
}
