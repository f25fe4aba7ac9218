package leafturn.records.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.records.InputException;
import leafturn.records.trial.TrialModelFile.ModelAndTrial;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.AskedTrial;
import leafturn.trials.findings.LaidTrial;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import org.jspecify.annotations.Nullable;

/** A table of results of a trial whose plan is known. */
public final class PlannedTable {
  private PlannedTable() {}

  /**
   * What the plan fixed for the outcome of a model.
   *
   * @param asked what the model says of columns and deviations
   * @param table of results
   * @param file of the plan, for messages
   * @throws InputException where plan, model and table do not speak of the same trial
   */
  public static AskedTrial of(
      TrialPlan plan, ModelAndTrial model, AskedTrial asked, TrialTable table, Path file) {
    return PlannedDates.dated(plan, of(plan, model.model(), asked, table, file), table, file);
  }

  private static AskedTrial of(
      TrialPlan plan, TrialModel model, AskedTrial asked, TrialTable table, Path file) {
    Outcome outcome =
        plan.observing().outcomes().stream()
            .filter(each -> each.name().equals(model.response()))
            .findFirst()
            .orElseThrow(() -> new InputException(otherOutcomes(plan, model, file)));
    boolean log = outcome.scale() == Outcome.Scale.LOG;
    if (log != (model.scale() == TrialModel.Scale.LOG)) {
      throw new InputException(
          "%s: %s is planned on the scale %s, but the model says %s; use the planned one."
              .formatted(file, outcome.name(), outcome.scale().word(), model.scale().word()));
    }
    PlannedUnits units = PlannedUnits.of(plan, asked, table);
    return new AskedTrial(
        plan.name(),
        plan.question(),
        asked.columns(),
        plan.treatments().contrasts(),
        null,
        outcome,
        new AskedTrial.Scope(
            plan.lawns().size(), units.started(), plan.observing().from().toEpochDay()),
        plan.seed(),
        new PlanRecord(
            TrialPlanText.sha256(plan), units.deviations(), plan.observing().exclusions()),
        laid(plan, asked, file));
  }

  /**
   * Units of every arm once are told by the table itself; what else there is by the plots' codes.
   */
  private static @Nullable LaidTrial laid(TrialPlan plan, AskedTrial asked, Path file) {
    return switch (plan.arrangement().design()) {
      case SPLIT_YARD, RANDOMISED_BLOCK -> null;
      case SPLIT_PLOT, STRIP_PLOT, LATIN_SQUARE, PAIRED_STRIPS, LISTED -> {
        if (asked.columns().plot() == null) {
          throw new InputException(
              "%s: a table of a %s needs the codes of its plots, as leafturn trial lay gives them; name their column in the model, \"trial\": {\"plot\": \"plot\"}."
                  .formatted(file, plan.arrangement().design().word()));
        }
        yield PlannedLayout.of(plan, PlannedLayout.draw(plan));
      }
    };
  }

  private static String otherOutcomes(TrialPlan plan, TrialModel model, Path file) {
    List<Outcome> outcomes = plan.observing().outcomes();
    return "%s: it plans no outcome '%s'; it plans %s."
        .formatted(
            file,
            model.response(),
            outcomes.stream().map(Outcome::name).collect(Collectors.joining(", ")));
  }
}
