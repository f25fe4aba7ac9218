package leafturn.records.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.LaidTrial;
import leafturn.trials.findings.Plot;
import leafturn.trials.findings.PlotReading;
import leafturn.trials.findings.TrialFacts;
import leafturn.trials.findings.TrialFacts.PlanRecord;
import leafturn.trials.observation.CleanReading;
import leafturn.trials.observation.Reading;

/** The findings of a trial of the book: plan, layout and readings brought together. */
public final class BookFindings {
  /**
   * All that findings rest on.
   *
   * @param trial the trial with its plan
   * @param events what befell it
   * @param readings what was read
   * @param ended whether its season is over
   */
  public record Basis(
      TrialSheet trial, List<TrialEventSheet> events, List<Reading> readings, boolean ended) {
    public Basis {
      events = List.copyOf(events);
      readings = List.copyOf(readings);
    }
  }

  private final TrialSheet trial;
  private final TrialPlan plan;
  private final List<TrialEventSheet> events;

  private BookFindings(TrialSheet trial, List<TrialEventSheet> events) {
    this.trial = trial;
    this.plan = BookPlan.of(trial);
    this.events = events;
  }

  /**
   * What the findings of a trial rest on today.
   *
   * @throws InputException where its plan has faults
   */
  public static Basis basis(TrialShelf shelf, Sheet<TrialSheet> trial, LocalDate today) {
    List<TrialEventSheet> events = shelf.events(trial.id()).stream().map(Sheet::content).toList();
    boolean ended = isOver(trial.content(), today);
    return new Basis(trial.content(), events, shelf.readings(trial.id()), ended);
  }

  /**
   * What the findings of a trial that is in no book rest on.
   *
   * @throws InputException where its plan has faults
   */
  public static Basis basis(PackedTrial packed, LocalDate today) {
    boolean ended = isOver(packed.trial(), today);
    return new Basis(packed.trial(), packed.events(), packed.readings(), ended);
  }

  private static boolean isOver(TrialSheet trial, LocalDate today) {
    return trial.ended() != null || today.isAfter(BookPlan.of(trial).observing().to());
  }

  /**
   * What a trial has found. Takes seconds for a trial of many readings: not for within a reading of
   * the book.
   *
   * @throws InputException where plan, layout or readings have faults
   * @throws leafturn.trials.analysis.data.TrialFaultException where there is nothing to analyse
   */
  public static Findings of(Basis basis) {
    return new BookFindings(basis.trial(), basis.events())
        .findings(basis.readings(), basis.ended());
  }

  private Findings findings(List<Reading> readings, boolean ended) {
    TrialLayout layout = PlannedLayout.draw(plan);
    LaidTrial laid = PlannedLayout.of(plan, layout);
    Map<String, List<PlotReading>> byOutcome = new LinkedHashMap<>();
    TrialValues.of(layout, events, readings)
        .byOutcome()
        .forEach(
            (outcome, samples) ->
                byOutcome.put(
                    outcome.name(), samples.stream().map(BookFindings::plotReading).toList()));
    return Findings.of(facts(laid, ended), laid.plots(), plan.observing().outcomes(), byOutcome);
  }

  private static PlotReading plotReading(CleanReading sample) {
    return new PlotReading(
        sample.plot(),
        sample.date().toString(),
        sample.date().toEpochDay(),
        sample.value(),
        sample.belowDetection());
  }

  private TrialFacts facts(LaidTrial laid, boolean ended) {
    return new TrialFacts(
        plan.name(),
        plan.question(),
        laid.design(),
        plan.treatments().factor(),
        laid.unitWord(),
        plan.treatments().contrasts(),
        plan.lawns().size(),
        (int) laid.plots().stream().map(Plot::unit).distinct().count(),
        ended,
        plan.observing().from().toEpochDay(),
        laid.randomisation(),
        record());
  }

  private PlanRecord record() {
    TrialSheet.Frozen frozen = trial.frozen();
    List<String> deviations = new ArrayList<>();
    if (frozen != null && !BookPlan.isAsFrozen(trial)) {
      deviations.add("The plan was changed after it was frozen; the page of the trial shows how");
    }
    LocalDate ended = trial.ended();
    List<LocalDate> dates = plan.observing().dates();
    if (ended != null && !dates.isEmpty() && ended.isBefore(dates.get(dates.size() - 1))) {
      String why = trial.whyEnded() == null ? "" : ", " + trial.whyEnded();
      deviations.add("It was ended on %s, before its last planned date%s".formatted(ended, why));
    }
    for (TrialEventSheet event : events) {
      TrialEventSheet.Exclusion decided = event.exclusion();
      if (decided != null && decided.leftOut()) {
        String where =
            event.plots().isEmpty() ? "all plots" : "plots " + String.join(", ", event.plots());
        deviations.add(
            "Left out from %s on: %s (%s; %s)"
                .formatted(event.day(), where, event.what().words(), decided.why()));
      }
    }
    return new PlanRecord(
        frozen == null ? null : frozen.hash(), deviations, plan.observing().exclusions());
  }
}
