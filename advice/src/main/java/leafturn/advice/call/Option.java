package leafturn.advice.call;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One choice and what it would do.
 *
 * @param choice the kind of choice
 * @param title in words, for instance "Tomorrow, return"
 * @param day the day of (the first) cut
 * @param best true for the one the call recommends
 * @param remark a short note under the title, for instance "grass is wet"; may be empty
 * @param outcome the computed outcome over the possible seasons
 */
public record Option(
    Choice choice, String title, LocalDate day, boolean best, String remark, Outcome outcome) {

  /**
   * The computed outcome of one choice; a null component is not known to the model or needs a
   * description the lawn lacks (bags and minutes need the mower, kilograms need the area).
   *
   * @param heightTakenFraction share of the grass height taken by the cut, 0-1; of steps that of
   *     the cut with the largest median, by what the unmown lawn grows between them, as the rule
   *     judges
   * @param dryGPerM2 dry clippings of the cut, g/m2 (sum of both cuts when cut twice)
   * @param dryKg dry clippings, kg for the lawn
   * @param freshKg fresh clippings, kg for the lawn
   * @param freshLitres loose fresh volume, litres for the lawn
   * @param bags bags filled with this mower
   * @param clumpIndex local load on the turf over its limit for dry or wet grass
   * @param daysToHalf days until half of the clippings' carbon has broken down
   * @param daysToNineTenths days until nine tenths have broken down
   * @param nitrogenG N in the clippings, g for 1 m2
   * @param phosphorusG P in the clippings, g for 1 m2
   * @param potassiumG K in the clippings, g for 1 m2
   * @param nitrogenShareOfYearsFeed N in the clippings over the year's fertiliser N, 0-1 or more
   * @param collectedFraction share of the clippings' dry mass that is collected, 0-1
   * @param thatchChangeMm change of thatch over the run, mm, against today
   * @param leachedNGPerM2 N leached over the run, g/m2
   * @param minutes work for the cut(s), minutes
   * @param nextMowDay day of the year's calendar on which the next cut is due, days from today
   * @param kind what kind of clippings it makes
   * @param inSight how long the clippings are seen, or null where none are returned or they would
   *     be seen to the end of the run
   * @param thatchInAYear thatch a year from now if every mowing were done like this one, returned
   *     or collected, or null where no year of weather is on record
   * @param phosphorusShareOfYearsFeed P in the clippings over the year's fertiliser P, or null
   *     where none is fed
   * @param potassiumShareOfYearsFeed the same of K
   * @param nutrientsOfTheLawn N, P and K in the clippings of the whole lawn, or null where its area
   *     is not known
   */
  public record Outcome(
      Spread heightTakenFraction,
      Spread dryGPerM2,
      @Nullable Spread dryKg,
      @Nullable Spread freshKg,
      @Nullable Spread freshLitres,
      @Nullable Spread bags,
      Spread clumpIndex,
      @Nullable Spread daysToHalf,
      @Nullable Spread daysToNineTenths,
      Spread nitrogenG,
      Spread phosphorusG,
      Spread potassiumG,
      @Nullable Spread nitrogenShareOfYearsFeed,
      double collectedFraction,
      Spread thatchChangeMm,
      Spread leachedNGPerM2,
      @Nullable Spread minutes,
      @Nullable Spread nextMowDay,
      CutKind kind,
      @Nullable InSightFor inSight,
      @Nullable ThatchInAYear thatchInAYear,
      @Nullable Spread phosphorusShareOfYearsFeed,
      @Nullable Spread potassiumShareOfYearsFeed,
      @Nullable Nutrients nutrientsOfTheLawn) {
    /** True when all clippings stay in the turf. */
    public boolean nutrientsStay() {
      return collectedFraction == 0;
    }

    /** True when a part of the clippings is collected, and a part stays. */
    public boolean collectedInPart() {
      return collectedFraction > 0 && collectedFraction < 1;
    }
  }

  /** N, P and K, g. */
  public record Nutrients(Spread nitrogenG, Spread phosphorusG, Spread potassiumG) {}
}
