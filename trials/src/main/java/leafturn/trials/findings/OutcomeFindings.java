package leafturn.trials.findings;

import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.Sphericity;
import org.jspecify.annotations.Nullable;

/**
 * What was found of one outcome, on the scale of its analysis.
 *
 * @param table one value for each plot and date
 * @param summaries of each plot's season; NaN where its unit is left out
 * @param pairs units with both arms of the main comparison
 * @param effects of the planned comparisons; none before the season's end, for one unit, or where
 *     too much lies below detection
 * @param areas of a single unit; null elsewhere
 * @param support what stands beside the effects
 * @param leftOut units, with the reason
 * @param warnings what a reader should know
 */
public record OutcomeFindings(
    Outcome outcome,
    SeasonTable table,
    double[] summaries,
    PairedSeason pairs,
    List<Effect> effects,
    @Nullable AreasDifference areas,
    Support support,
    List<String> leftOut,
    List<String> warnings) {

  /**
   * What stands beside the effects, each null where it does not apply.
   *
   * @param randomisation the exact test by the layouts that might have been drawn
   * @param dates the mixed model of all dates
   * @param selfCheck that both ways agree
   * @param ordinal ratings as classes
   * @param sphericity whether any two dates differ alike between plots
   */
  public record Support(
      @Nullable RandomisationTest randomisation,
      @Nullable DatesModel dates,
      @Nullable SelfCheck selfCheck,
      @Nullable OrdinalCheck ordinal,
      @Nullable Sphericity sphericity) {
    static final Support NONE = new Support(null, null, null, null, null);
  }

  public OutcomeFindings {
    effects = List.copyOf(effects);
    leftOut = List.copyOf(leftOut);
    warnings = List.copyOf(warnings);
  }

  /** Units with a season of every plot, of however many dates: those that the result rests on. */
  public int unitsUsed() {
    return (int) table.units().stream().filter(this::isUsed).count();
  }

  /**
   * Units each of whose plots was read on as many dates as were planned.
   *
   * @param plannedDays 0 where nobody knows: then all on which any plot was read
   */
  public int unitsWhole(int plannedDays) {
    int wanted = plannedDays > 0 ? plannedDays : table.dates().size();
    return (int)
        table.units().stream().filter(unit -> isUsed(unit) && datesRead(unit) >= wanted).count();
  }

  private boolean isUsed(String unit) {
    return table.plotsOf(unit).stream().noneMatch(plot -> Double.isNaN(summaries[plot]));
  }

  /** Dates on which each plot of a unit was read. */
  private long datesRead(String unit) {
    return IntStream.range(0, table.dates().size())
        .filter(
            date ->
                table.plotsOf(unit).stream()
                    .noneMatch(plot -> Double.isNaN(table.values()[plot][date])))
        .count();
  }

  OutcomeFindings withoutVerdict() {
    return withEffects(effects.stream().map(Effect::withoutVerdict).toList());
  }

  OutcomeFindings withEffects(List<Effect> others) {
    return new OutcomeFindings(
        outcome, table, summaries, pairs, others, areas, support, leftOut, warnings);
  }
}
