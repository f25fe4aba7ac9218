package leafturn.reports.plan;

import leafturn.advice.call.Spread;
import leafturn.advice.season.PlanAim;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.reports.QuantityWords;
import leafturn.reports.UnitWords;

/**
 * The aims of a plan in words.
 *
 * @param units of the reader
 * @param third largest share of the height that one cut should take by the rules of the plan, in
 *     words
 */
public record AimWords(UnitWords units, String third) {
  /** Keeps an element on the line of its unit, and apart from it. */
  static final char NO_BREAK = '\u00a0';

  /** What somebody wants: "less work". */
  public String wish(PlanAim aim) {
    return switch (aim) {
      case WORK -> "less work";
      case CARRYING -> "less to carry away";
      case FEED -> "less feed for growth as now";
      case KEEPING ->
          units.units() == Units.US
              ? "more nitrogen in clippings that are left"
              : "more nitrogen in clippings that are returned";
      case NITRATE -> "less nitrate lost";
      case THATCH -> "less thatch after five years";
      case CLUMPS -> "fewer mowings with clumps likely";
      case THIRD_RULE -> "fewer mowings over " + third;
      case GROWTH -> "growth as now or more";
    };
  }

  /** The opposite: "more work". */
  String cost(PlanAim aim) {
    return switch (aim) {
      case WORK -> "more work";
      case CARRYING -> "more to carry away";
      case FEED -> "more feed for growth as now";
      case KEEPING ->
          units.units() == Units.US
              ? "less nitrogen in clippings that are left"
              : "less nitrogen in clippings that are returned";
      case NITRATE -> "more nitrate lost";
      case THATCH -> "more thatch after five years";
      case CLUMPS -> "more mowings with clumps likely";
      case THIRD_RULE -> "more mowings over " + third;
      case GROWTH -> "less growth";
    };
  }

  /** What an aim is measured by, for an axis: "nitrate N lost, g/m² a year". */
  public String measure(PlanAim aim) {
    String onArea = units.onAreaUnit();
    return switch (aim) {
      case WORK -> "mowings a year";
      case CARRYING -> "clippings carried away, " + units.volumeOnAreaUnit() + " a year";
      case FEED -> "N needed for growth as now, " + onArea + " a year";
      case KEEPING ->
          (units.units() == Units.US ? "N in clippings left, " : "N in returned clippings, ")
              + onArea
              + " a year";
      case NITRATE -> "nitrate N lost, " + onArea + " a year";
      case THATCH -> "thatch after five years, " + units.heightUnit();
      case CLUMPS -> "mowings with clumps likely a year";
      case THIRD_RULE -> "mowings over " + third + ", % of them";
      case GROWTH -> "leaf grown, dry, " + onArea + " a year";
    };
  }

  /** The number of {@link #measure} for a programme, in the units of the reader. */
  public double value(PlanAim aim, ProgrammeOutcome outcome) {
    return switch (aim) {
      case WORK -> outcome.mowings().middle();
      case CARRYING -> units.litresOnArea(outcome.work().collectedLitresPerM2().middle());
      case FEED -> onArea(needed(outcome));
      case KEEPING -> onArea(outcome.kept().nGPerM2().middle());
      case NITRATE -> onArea(outcome.leachedNGPerM2().middle());
      case THATCH -> Measure.HEIGHT.shown(outcome.thatch().after5YearsMm().middle(), units.units());
      case CLUMPS -> outcome.risks().clumpMowings().middle();
      case THIRD_RULE -> 100 * outcome.risks().thirdRuleBrokenFraction().middle();
      case GROWTH -> onArea(outcome.growthGPerM2().middle());
    };
  }

  private double onArea(double gPerM2) {
    return Measure.MASS_PER_AREA.shown(gPerM2, units.units());
  }

  /** Needed N, g/m2; the highest feed tried where that is not enough. */
  private static double needed(ProgrammeOutcome outcome) {
    Spread needed = outcome.feed().equalGrowthNGPerM2();
    return needed == null ? ProgrammeOutcome.MOST_FEED_G_PER_M2 : needed.middle();
  }

  /** What a programme has of an aim, in words: "29 mowings", "3.4 mm". */
  public String figure(PlanAim aim, ProgrammeOutcome outcome) {
    return switch (aim) {
      case WORK -> work(outcome);
      case CARRYING -> carried(outcome);
      case FEED -> ofNitrogen(feed(outcome));
      case KEEPING -> ofNitrogen(units.onArea(outcome.kept().nGPerM2()).middle());
      case NITRATE -> ofNitrogen(units.onArea(outcome.leachedNGPerM2()).middle());
      case THATCH -> units.depth(outcome.thatch().after5YearsMm()).middle();
      case CLUMPS -> QuantityWords.whole(outcome.risks().clumpMowings().middle(), "a year");
      case THIRD_RULE -> QuantityWords.percent(outcome.risks().thirdRuleBrokenFraction().middle());
      case GROWTH -> units.onArea(outcome.growthGPerM2()).middle();
    };
  }

  /** The element stays on the line of its unit. */
  private static String ofNitrogen(String onArea) {
    return onArea + NO_BREAK + "N";
  }

  private static String work(ProgrammeOutcome outcome) {
    boolean once = Math.round(outcome.mowings().middle()) == 1;
    String mowings = QuantityWords.whole(outcome.mowings().middle(), once ? "mowing" : "mowings");
    Spread hours = outcome.work().hours();
    return hours == null
        ? mowings
        : QuantityWords.quantity(hours, "hours").middle() + " in " + mowings;
  }

  private String carried(ProgrammeOutcome outcome) {
    if (outcome.work().collectedLitresPerM2().high() == 0) {
      return "nothing";
    }
    Spread bags = outcome.work().bags();
    if (bags != null) {
      return QuantityWords.whole(bags.middle(), "bags");
    }
    Spread litres = outcome.work().collectedLitres();
    return litres == null
        ? units.volumeOnArea(outcome.work().collectedLitresPerM2()).middle()
        : units.volume(litres).middle();
  }

  private String feed(ProgrammeOutcome outcome) {
    Spread needed = outcome.feed().equalGrowthNGPerM2();
    return needed == null
        ? "more than " + units.onArea(Spread.exactly(ProgrammeOutcome.MOST_FEED_G_PER_M2)).middle()
        : units.onArea(needed).middle();
  }
}
