package leafturn.records.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.exchange.TrialGround;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.Standing;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.ReadingKeys;
import leafturn.trials.observation.RecordedLayout;
import leafturn.trials.observation.Remark;

/** How a trial was kept to its plan, in sentences. */
final class TrialRecord {
  private static final int MOST_VALUES = 6;
  private static final String UNKNOWN_CHANGE =
      "The plan was changed after it was frozen, and what it was then is not kept here";

  private final BookFindings.Basis basis;
  private final TrialSheet trial;
  private final TrialPlan plan;
  private final FrozenPlan frozenPlan;

  TrialRecord(BookFindings.Basis basis, TrialPlan plan) {
    this.basis = basis;
    this.trial = basis.trial();
    this.plan = plan;
    this.frozenPlan = new FrozenPlan(basis.past(), plan);
  }

  /** How far a verdict stands. */
  Standing standing(TrialGround ground) {
    TrialChecks checks =
        new TrialChecks(trial, ground, basis.readings(), basis.events(), basis.ended());
    List<String> refusals = new ArrayList<>(checks.refusals());
    List<Remark> remarks = new ArrayList<>(checks.remarksBesideFindings());
    List<String> changes = new ArrayList<>();
    frozenLate()
        .ifPresent(
            late -> {
              changes.add(late);
              remarks.add(new Remark(Remark.Weight.WARNING, late));
            });
    Integer draws = basis.past().draws();
    if (draws != null && draws > 1 && trial.frozen() != null) {
      changes.add(DrawWords.of(draws, true));
    }
    changes.addAll(new TrialHindsight(trial, plan, basis.readings()).cautions(basis.events()));
    if (isChanged()) {
      List<String> judging = verdictChanges();
      changes.addAll(judging);
      remarks.removeIf(
          each -> !judging.isEmpty() && each.sentence().equals(RecordedLayout.CHANGED));
      if (frozenPlan.outcomes().stream().noneMatch(Outcome::primary)) {
        refusals.add("The primary outcome of the frozen plan is no longer in the plan.");
      }
    }
    int plannedDays = TrialHindsight.plannedDays(plan, plan.primary()).size();
    return new Standing(refusals, changes, frozen(), isFixedBeforeReading(), plannedDays, remarks);
  }

  private boolean isFixedBeforeReading() {
    return trial.frozen() != null && !basis.brought() && !isChanged() && frozenLate().isEmpty();
  }

  /** That the plan was frozen when something was read already, or all of it should have been. */
  private Optional<String> frozenLate() {
    TrialSheet.Frozen frozen = trial.frozen();
    Optional<LocalDate> first = readBefore();
    if (frozen == null || (first.isEmpty() && !BookPlan.isFrozenLate(trial, basis.zone()))) {
      return Optional.empty();
    }
    String after =
        first.map("after readings of %s and later"::formatted).orElse("after all its planned days");
    return Optional.of(
        "The plan was frozen on %s, %s: nothing shows that it was fixed before anybody knew what came out, and the verdict convinces less."
            .formatted(LocalDate.ofInstant(frozen.moment(), basis.zone()), after));
  }

  private boolean isChanged() {
    return trial.frozen() != null && !BookPlan.isAsFrozen(trial);
  }

  /** What a change of the frozen plan does to the verdict. */
  private List<String> verdictChanges() {
    List<String> changes = new ArrayList<>();
    judgingChanges().forEach(each -> changes.add(each + "."));
    if (!changes.isEmpty() && frozenPlan.isOther()) {
      changes.add("The verdict is by the plan as it was frozen.");
    }
    return changes;
  }

  private List<String> judgingChanges() {
    if (!frozenPlan.isOther()) {
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
    LocalDate day = LocalDate.ofInstant(frozen.moment(), basis.zone());
    return basis.readings().stream()
        .map(Reading::date)
        .filter(date -> date.isBefore(day))
        .min(Comparator.naturalOrder());
  }

  /** When and as what the plan was frozen; that it was late is a warning of its own. */
  private List<String> frozen() {
    TrialSheet.Frozen frozen = trial.frozen();
    if (frozen == null) {
      return List.of(
          "The plan was never frozen: nothing shows that margin, outcome and rules were there before the results.");
    }
    List<String> lines = new ArrayList<>();
    LocalDate day = LocalDate.ofInstant(frozen.moment(), basis.zone());
    lines.add(
        frozenLate().isPresent()
            ? "The SHA-256 of the frozen plan is %s.".formatted(frozen.hash())
            : "The plan was frozen on %s, before the first reading; its SHA-256 is %s."
                .formatted(day, frozen.hash()));
    if (basis.brought()) {
      lines.add(
          "When it was frozen is told as the package says that the trial came with; this book did not see it.");
    }
    Integer draws = basis.past().draws();
    if (draws != null) {
      lines.add(DrawWords.of(draws, true));
    }
    return lines;
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
    basis.past().withdrawn().forEach(each -> deviations.add(withdrawn(each)));
    basis
        .past()
        .events()
        .forEach(
            each ->
                deviations.add(
                    "Changed on %s: of %s it was noted before: %s"
                        .formatted(each.on(), each.day(), each.words())));
    addLastDates(deviations);
    addLeftOut(deviations);
    return new PlanRecord(
        frozen == null ? null : frozen.hash(), deviations, plan.observing().exclusions());
  }

  /** What was taken back, with its values and what was read in their place. */
  private String withdrawn(TrialPast.Withdrawn taken) {
    Map<List<Object>, String> now = new HashMap<>();
    basis.readings().forEach(each -> now.put(ReadingKeys.of(each), each.value()));
    List<Reading> readings = taken.readings();
    List<String> values = new ArrayList<>();
    for (Reading each : readings.subList(0, Math.min(MOST_VALUES, readings.size()))) {
      String again = now.get(ReadingKeys.of(each));
      values.add(
          "%s on %s: %s%s"
              .formatted(
                  each.plot(), each.date(), each.value(), again == null ? "" : ", now " + again));
    }
    if (readings.size() > MOST_VALUES) {
      values.add("and %d more".formatted(readings.size() - MOST_VALUES));
    }
    return "Withdrawn on %s%s: %d %s of %s (%s)"
        .formatted(
            taken.on(),
            taken.why() == null ? "" : ", because " + taken.why(),
            readings.size(),
            readings.size() == 1 ? "reading" : "readings",
            String.join(", ", readings.stream().map(Reading::outcome).distinct().toList()),
            String.join("; ", values));
  }

  private void addEarlyEnd(List<String> deviations) {
    Optional<String> told = new TrialHindsight(trial, plan, basis.readings()).earlyEnd();
    if (told.isPresent()) {
      deviations.add(told.get());
      return;
    }
    LocalDate ended = trial.ended();
    List<LocalDate> dates = plan.observing().dates();
    if (ended != null && !dates.isEmpty() && ended.isBefore(dates.get(dates.size() - 1))) {
      String why = trial.whyEnded() == null ? "" : ", " + trial.whyEnded();
      deviations.add("It was ended on %s, before its last planned date%s".formatted(ended, why));
    }
  }

  private void addLastDates(List<String> deviations) {
    for (Outcome outcome : plan.observing().outcomes()) {
      List<LocalDate> planned = TrialHindsight.plannedDays(plan, outcome);
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
