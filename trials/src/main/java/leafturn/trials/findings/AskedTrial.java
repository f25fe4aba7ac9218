package leafturn.trials.findings;

import java.util.List;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * What a table of results does not say of its trial.
 *
 * @param name of the trial; empty where none is given
 * @param question it asks; empty where none is given
 * @param columns of the table
 * @param contrasts planned comparisons; none for all arms against the control
 * @param control the arm that others are compared with; null for the first
 * @param outcome that the table holds
 * @param scope where and how large the trial was
 * @param seed of the layout; null where none is known
 * @param record what was kept of the plan
 * @param laid plots and randomisation by the plan, whose codes the table's column of plots holds;
 *     null where units that each hold every arm once are all there is to know
 */
public record AskedTrial(
    String name,
    String question,
    Columns columns,
    List<Contrast> contrasts,
    @Nullable String control,
    Outcome outcome,
    Scope scope,
    @Nullable Long seed,
    TrialFacts.PlanRecord record,
    @Nullable LaidTrial laid) {

  /**
   * Columns of the table.
   *
   * @param unit yards, pairs or blocks
   * @param factor arms
   * @param time dates; null where each plot was read once
   * @param plot codes; null where unit and arm tell the plots apart
   */
  public record Columns(String unit, String factor, @Nullable String time, @Nullable String plot) {}

  /**
   * Where and how large the trial was.
   *
   * @param yards separate yards; null where each unit is one
   * @param started units at the beginning; null where all are in the table
   * @param seasonFrom first day of the season as a number of days; NaN where none is known
   */
  public record Scope(@Nullable Integer yards, @Nullable Integer started, double seasonFrom) {}

  public AskedTrial {
    contrasts = List.copyOf(contrasts);
  }
}
