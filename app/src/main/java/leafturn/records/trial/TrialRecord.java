package leafturn.records.trial;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leafturn.records.exchange.TrialGround;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.Standing;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import leafturn.trials.observation.Reading;

/** How a trial was kept to its plan, in sentences. */
final class TrialRecord {
  private static final String UNKNOWN_CHANGE =
      "The plan was changed after it was frozen, and what it was then is not kept here";

  private final BookFindings.Basis basis;
  private final TrialSheet trial;
  private final TrialPlan plan;

  TrialRecord(BookFindings.Basis basis, TrialPlan plan) {
    this.basis = basis;
    this.trial = basis.trial();
    this.plan = plan;
  }

  /** How far a verdict stands. */
  Standing standing(TrialGround ground) {
    List<String> refusals =
        new ArrayList<>(TrialChecks.refusals(trial, ground, basis.readings(), basis.events()));
    List<String> changes = new ArrayList<>();
    if (isChanged()) {
      judgingChanges().forEach(each -> changes.add(each + "."));
      if (!changes.isEmpty() && basis.past().plans().size() > 1) {
        changes.add("The verdict is by the plan as it was frozen.");
      }
      if (basis.past().outcomes(plan).stream().noneMatch(Outcome::primary)) {
        refusals.add("The primary outcome of the frozen plan is no longer in the plan.");
      }
    }
    boolean fixed =
        trial.frozen() != null
            && !isChanged()
            && readBefore().isEmpty()
            && !BookPlan.isFrozenLate(trial);
    return new Standing(refusals, changes, frozen(), fixed);
  }

  private boolean isChanged() {
    return trial.frozen() != null && !BookPlan.isAsFrozen(trial);
  }

  private List<String> judgingChanges() {
    if (basis.past().plans().size() < 2) {
      return List.of(UNKNOWN_CHANGE);
    }
    return PlanChange.of(basis.past().plans()).stream()
        .filter(PlanChange::judging)
        .map(PlanChange::sentence)
        .toList();
  }

  /** The first day that was read before the plan was frozen. */
  private Optional<LocalDate> readBefore() {
    TrialSheet.Frozen frozen = trial.frozen();
    if (frozen == null) {
      return Optional.empty();
    }
    LocalDate day = LocalDate.ofInstant(frozen.moment(), ZoneOffset.UTC);
    return basis.readings().stream()
        .map(Reading::date)
        .filter(date -> date.isBefore(day))
        .min(Comparator.naturalOrder());
  }

  private String frozen() {
    TrialSheet.Frozen frozen = trial.frozen();
    if (frozen == null) {
      return "";
    }
    LocalDate day = LocalDate.ofInstant(frozen.moment(), ZoneOffset.UTC);
    String when =
        readBefore()
            .map(first -> ", though readings are dated before that, the first %s".formatted(first))
            .orElse(
                BookPlan.isFrozenLate(trial)
                    ? ", though all its planned days lay before that"
                    : ", before the first reading");
    String since = isChanged() ? ", and it was changed since" : "";
    return "The plan was frozen on %s%s%s; its SHA-256 is %s."
        .formatted(day, when, since, frozen.hash());
  }

  /** What was kept of the plan, with all that was not as planned. */
  PlanRecord kept() {
    TrialSheet.Frozen frozen = trial.frozen();
    List<String> deviations = new ArrayList<>();
    PlanChange.of(basis.past().plans()).forEach(each -> deviations.add(each.sentence()));
    if (isChanged() && deviations.isEmpty()) {
      deviations.add(UNKNOWN_CHANGE);
    }
    addEarlyEnd(deviations);
    deviations.addAll(basis.past().withdrawn());
    addLastDates(deviations);
    addLeftOut(deviations);
    return new PlanRecord(
        frozen == null ? null : frozen.hash(), deviations, plan.observing().exclusions());
  }

  private void addEarlyEnd(List<String> deviations) {
    LocalDate ended = trial.ended();
    List<LocalDate> dates = plan.observing().dates();
    if (ended != null && !dates.isEmpty() && ended.isBefore(dates.get(dates.size() - 1))) {
      String why = trial.whyEnded() == null ? "" : ", " + trial.whyEnded();
      deviations.add("It was ended on %s, before its last planned date%s".formatted(ended, why));
    }
  }

  private void addLastDates(List<String> deviations) {
    for (Outcome outcome : plan.observing().outcomes()) {
      boolean soil = outcome.kind() == Outcome.Kind.SOIL;
      List<LocalDate> planned =
          soil && !plan.observing().cores().dates().isEmpty()
              ? plan.observing().cores().dates()
              : plan.observing().dates();
      Optional<LocalDate> last = planned.stream().max(Comparator.naturalOrder());
      Optional<LocalDate> read =
          basis.readings().stream()
              .filter(each -> each.outcome().equals(outcome.name()))
              .map(Reading::date)
              .max(Comparator.naturalOrder());
      boolean byLast = outcome.summary() == Outcome.Summary.LAST_DATE;
      if (byLast
          && basis.ended()
          && last.isPresent()
          && read.isPresent()
          && read.get().isBefore(last.get())) {
        deviations.add(
            "%s was not read on its last planned date, %s; %s, the last one read, stands for it"
                .formatted(outcome.name().replace('_', ' '), last.get(), read.get()));
      }
    }
  }

  private void addLeftOut(List<String> deviations) {
    for (TrialEventSheet event : basis.events()) {
      TrialEventSheet.Exclusion decided = event.exclusion();
      if (decided != null && decided.leftOut()) {
        String where =
            event.plots().isEmpty() ? "all plots" : "plots " + String.join(", ", event.plots());
        deviations.add(
            "Left out from %s on: %s (%s; %s)"
                .formatted(event.day(), where, event.what().words(), decided.why()));
      }
    }
  }
}
