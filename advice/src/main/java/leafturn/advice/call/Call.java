package leafturn.advice.call;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * The call for one lawn and day.
 *
 * @param on the day the call is for
 * @param choice what to do
 * @param mowOn the day to mow, or null when nothing is to be mown in sight
 * @param sentence the answer in one sentence
 * @param reasons in order of weight; the first one decides
 * @param options side by side, the best one marked
 * @param mowBy day on which a third of the height would come off, over the possible seasons, days
 *     from {@code on}; null when at least half of them do not reach it within the run
 * @param wouldChange what would change this answer
 * @param cautions plain cautions that arise today
 * @param notes what the model filled in, corrected or does not know
 * @param today the lawn's state today
 * @param outlook the season so far and to come
 * @param possibleSeasons the weather that every spread of this call is taken over
 * @param waits waiting one to seven days and returning, by the day, for those who want another day
 *     than the one among the options; may be empty
 * @param limits what its figures are held against
 * @param units the units of its sentences
 * @param particulars what goes with the answer: cuts, hours, water, places
 */
public record Call(
    LocalDate on,
    Choice choice,
    @Nullable LocalDate mowOn,
    String sentence,
    List<Reason> reasons,
    List<Option> options,
    @Nullable Spread mowBy,
    List<String> wouldChange,
    List<String> cautions,
    List<String> notes,
    Today today,
    Outlook outlook,
    PossibleSeasons possibleSeasons,
    List<Option> waits,
    Limits limits,
    Units units,
    Particulars particulars) {
  public Call {
    reasons = List.copyOf(reasons);
    options = List.copyOf(options);
    wouldChange = List.copyOf(wouldChange);
    cautions = List.copyOf(cautions);
    notes = List.copyOf(notes);
    waits = List.copyOf(waits);
  }

  /** This call with notes on what its inputs lacked put before its own. */
  public Call noting(List<String> inputNotes) {
    List<String> all = new ArrayList<>(inputNotes);
    all.addAll(notes);
    return new Call(
        on,
        choice,
        mowOn,
        sentence,
        reasons,
        options,
        mowBy,
        wouldChange,
        cautions,
        all,
        today,
        outlook,
        possibleSeasons,
        waits,
        limits,
        units,
        particulars);
  }

  /**
   * Limits of the rules the call was made by, for words and marks.
   *
   * @param heightTakenFraction share of the height above which a cut takes too much, 0-1
   * @param clumpIndex clump index above which clumps are likely
   * @param heavyClumpIndex clump index above which they are very likely
   */
  public record Limits(double heightTakenFraction, double clumpIndex, double heavyClumpIndex) {
    /** The limits of some rules. */
    public static Limits of(CallRules rules) {
      return new Limits(
          rules.threshold(CallRule.ONE_THIRD),
          rules.threshold(CallRule.CLUMPS),
          rules.threshold(CallRule.CLUMPS_HEAVY));
    }
  }

  /**
   * The lawn's state on the day.
   *
   * @param heightMm grass height, mm
   * @param cutHeightMm height it is cut to, mm
   * @param thatchMm thatch, mm
   * @param clippingsShareOfThatch share of the thatch that came from clippings, 0-1
   * @param soilWaterFraction root-zone water over its capacity, 0-1
   * @param soilPhosphorusPpm soil-test P, ppm
   * @param soilPotassiumPpm soil-test K, ppm
   * @param possiblyWet true when the daily rule calls the leaves wet
   * @param lastMown the day of the last mowing, or null
   * @param lastMownLogged true when the log tells that mowing; else it is reckoned from the
   *     programme
   */
  public record Today(
      double heightMm,
      double cutHeightMm,
      double thatchMm,
      double clippingsShareOfThatch,
      double soilWaterFraction,
      double soilPhosphorusPpm,
      double soilPotassiumPpm,
      boolean possiblyWet,
      @Nullable LocalDate lastMown,
      boolean lastMownLogged) {}
}
