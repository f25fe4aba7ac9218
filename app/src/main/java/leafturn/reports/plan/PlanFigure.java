package leafturn.reports.plan;

import java.util.List;
import java.util.function.Function;
import leafturn.advice.call.Spread;
import leafturn.advice.season.ProgrammeOutcome;
import leafturn.reports.QuantityWords;
import leafturn.reports.SpreadWords;
import leafturn.reports.UnitWords;
import org.jspecify.annotations.Nullable;

/**
 * A quantity that a plan shows of each programme.
 *
 * @param name for a heading
 * @param words of a programme, with their unit
 */
public record PlanFigure(String name, Function<ProgrammeOutcome, SpreadWords> words) {
  private static final SpreadWords UNKNOWN = SpreadWords.only("–");
  private static final SpreadWords NONE = SpreadWords.only("none");

  /**
   * One quantity of each aim, for long lists.
   *
   * @param third largest share of the height that one cut should take, in words
   */
  public static List<PlanFigure> chosen(UnitWords units, String third) {
    List<PlanFigure> work = work(units);
    List<PlanFigure> nutrients = nutrients(units);
    List<PlanFigure> turf = turf(units, third);
    return List.of(
        work.get(0),
        work.get(3),
        nutrients.get(3),
        nutrients.get(4),
        turf.get(2),
        turf.get(3),
        turf.get(5));
  }

  /** What is done and carried. */
  public static List<PlanFigure> work(UnitWords units) {
    return List.of(
        new PlanFigure("Mowings", outcome -> QuantityWords.whole(outcome.mowings(), "")),
        new PlanFigure("Hours", outcome -> known(outcome.work().hours(), "h")),
        new PlanFigure("Bags", outcome -> bags(outcome.work().bags())),
        new PlanFigure("Carried away", outcome -> carried(outcome.work(), units)),
        new PlanFigure("Water given", outcome -> water(outcome.irrigationMm(), units)));
  }

  /** Nutrients and feed. */
  public static List<PlanFigure> nutrients(UnitWords units) {
    return List.of(
        new PlanFigure("N kept", outcome -> onArea(outcome.kept().nGPerM2(), units)),
        new PlanFigure("P kept", outcome -> onArea(outcome.kept().pGPerM2(), units)),
        new PlanFigure("K kept", outcome -> onArea(outcome.kept().kGPerM2(), units)),
        new PlanFigure("N for growth as now", outcome -> feed(outcome, units)),
        new PlanFigure("Nitrate N lost", outcome -> onArea(outcome.leachedNGPerM2(), units)));
  }

  /**
   * Thatch, looks and growth.
   *
   * @param third largest share of the height that one cut should take, in words
   */
  public static List<PlanFigure> turf(UnitWords units, String third) {
    return List.of(
        new PlanFigure(
            "Thatch after 1 year", outcome -> units.depth(outcome.thatch().after1YearMm())),
        new PlanFigure(
            "Thatch after 3 years", outcome -> units.depth(outcome.thatch().after3YearsMm())),
        new PlanFigure(
            "Thatch after 5 years", outcome -> units.depth(outcome.thatch().after5YearsMm())),
        new PlanFigure(
            "Mowings with clumps likely",
            outcome -> QuantityWords.whole(outcome.risks().clumpMowings(), "")),
        new PlanFigure(
            "Mowings over " + third,
            outcome -> QuantityWords.percent(outcome.risks().thirdRuleBrokenFraction())),
        new PlanFigure("Leaf grown, dry", outcome -> onArea(outcome.growthGPerM2(), units)));
  }

  private static SpreadWords known(@Nullable Spread spread, String unit) {
    return spread == null ? UNKNOWN : QuantityWords.quantity(spread, unit);
  }

  private static SpreadWords bags(@Nullable Spread bags) {
    return bags == null ? UNKNOWN : QuantityWords.whole(bags, "");
  }

  private static SpreadWords carried(ProgrammeOutcome.Work work, UnitWords units) {
    Spread litres = work.collectedLitres();
    if (work.collectedLitresPerM2().high() == 0) {
      return NONE;
    }
    return litres == null ? units.volumeOnArea(work.collectedLitresPerM2()) : units.volume(litres);
  }

  private static SpreadWords water(Spread mm, UnitWords units) {
    return mm.high() == 0 ? NONE : units.water(mm);
  }

  private static SpreadWords feed(ProgrammeOutcome outcome, UnitWords units) {
    Spread needed = outcome.feed().equalGrowthNGPerM2();
    return needed == null
        ? SpreadWords.only(
            "more than "
                + units.onArea(Spread.exactly(ProgrammeOutcome.MOST_FEED_G_PER_M2)).middle())
        : onArea(needed, units);
  }

  private static SpreadWords onArea(Spread gPerM2, UnitWords units) {
    return gPerM2.high() == 0 ? NONE : units.onArea(gPerM2);
  }
}
