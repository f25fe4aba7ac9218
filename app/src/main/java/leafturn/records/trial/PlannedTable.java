package leafturn.records.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import leafturn.records.InputException;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.design.Design;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.AskedTrial;
import leafturn.trials.findings.TrialFacts.PlanRecord;

/** A table of results of a trial whose plan is known. */
public final class PlannedTable {
  private PlannedTable() {}

  /**
   * What the plan fixed for the outcome of a model.
   *
   * @param asked what the model says of columns and deviations
   * @param file of the plan, for messages
   * @throws InputException where plan, model and table do not speak of the same trial
   */
  public static AskedTrial of(TrialPlan plan, TrialModel model, AskedTrial asked, Path file) {
    if (plan.arrangement().design() != Design.SPLIT_YARD
        && plan.arrangement().design() != Design.RANDOMISED_BLOCK
        && plan.arrangement().design() != Design.PAIRED_STRIPS) {
      throw new InputException(
          "%s: a table is analysed by plan for split yards, blocks and paired strips, not for %s; keep the trial in a book, or leave the plan out."
              .formatted(file, plan.arrangement().design().word()));
    }
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
    AskedTrial.Scope scope = asked.scope();
    return new AskedTrial(
        plan.name(),
        plan.question(),
        asked.columns(),
        plan.treatments().contrasts(),
        null,
        outcome,
        new AskedTrial.Scope(
            plan.lawns().size(), scope.started(), plan.observing().from().toEpochDay()),
        plan.seed(),
        new PlanRecord(
            TrialPlanText.sha256(plan),
            asked.record().deviations(),
            plan.observing().exclusions()));
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
