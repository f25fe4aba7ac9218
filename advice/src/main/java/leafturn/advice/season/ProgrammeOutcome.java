package leafturn.advice.season;

import leafturn.advice.call.Spread;
import org.jspecify.annotations.Nullable;

/**
 * What a programme does to the lawn in a year, over the possible seasons.
 *
 * @param mowings a year
 * @param growthGPerM2 leaf grown, dry matter, g/m2
 * @param irrigationMm water given, mm
 * @param work hours and what is carried away
 * @param kept nutrients in returned clippings, g/m2
 * @param feed fertiliser
 * @param leachedNGPerM2 nitrate N washed out below the roots, g/m2
 * @param thatch thatch to come
 * @param risks what may spoil the look
 */
public record ProgrammeOutcome(
    Spread mowings,
    Spread growthGPerM2,
    Spread irrigationMm,
    Work work,
    Kept kept,
    Feed feed,
    Spread leachedNGPerM2,
    Thatch thatch,
    Risks risks) {
  /** Highest feed that is tried for equal growth, g N/m2 a year. */
  public static final double MOST_FEED_G_PER_M2 = EqualGrowthFeed.MOST_G_PER_M2;

  /** Fewer mowings a year keep a meadow and no lawn (our judgement). */
  public static final int FEWEST_MOWINGS = 4;

  /**
   * True unless the grass is mown so seldom that it is a lawn no more.
   *
   * @param present what the lawn's programme of now does, which may be as seldom
   */
  boolean keepsALawn(ProgrammeOutcome present) {
    return mowings.middle() >= Math.min(FEWEST_MOWINGS, present.mowings.middle());
  }

  /**
   * @param hours behind the mower and emptying bags, or null when area or mower is not described
   * @param collectedLitresPerM2 loose fresh clippings carried away
   * @param collectedLitres the same for the lawn, or null when its area is not known
   * @param bags bags filled, or null when not known
   */
  public record Work(
      @Nullable Spread hours,
      Spread collectedLitresPerM2,
      @Nullable Spread collectedLitres,
      @Nullable Spread bags) {}

  /** Elements in returned clippings, g/m2. */
  public record Kept(Spread nGPerM2, Spread pGPerM2, Spread kGPerM2) {}

  /**
   * @param givenNGPerM2 N that the programme gives a year
   * @param equalGrowthNGPerM2 N a year at which it grows as the lawn does now, or null when more
   *     than {@value #MOST_FEED_G_PER_M2} g/m2 would be needed
   */
  public record Feed(double givenNGPerM2, @Nullable Spread equalGrowthNGPerM2) {}

  /** Thatch after so many years with the programme, mm. */
  public record Thatch(Spread after1YearMm, Spread after3YearsMm, Spread after5YearsMm) {}

  /**
   * @param clumpMowings mowings a year after which returned clippings are likely to lie in clumps
   * @param thirdRuleBrokenFraction share of the mowings that take more than a third of the height,
   *     0 to 1
   */
  public record Risks(Spread clumpMowings, Spread thirdRuleBrokenFraction) {}
}
