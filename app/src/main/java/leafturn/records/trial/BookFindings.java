package leafturn.records.trial;

import java.time.LocalDate;
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
   * @param past what was changed and taken back
   */
  public record Basis(
      TrialSheet trial,
      List<TrialEventSheet> events,
      List<Reading> readings,
      boolean ended,
      TrialPast past) {
    /** Of a trial whose past nobody kept. */
    public Basis(
        TrialSheet trial, List<TrialEventSheet> events, List<Reading> readings, boolean ended) {
      this(trial, events, readings, ended, TrialPast.UNKNOWN);
    }

    public Basis {
      events = List.copyOf(events);
      readings = List.copyOf(readings);
    }
  }

  private final TrialSheet trial;
  private final TrialPlan plan;
  private final Basis basis;

  private BookFindings(Basis basis) {
    this.trial = basis.trial();
    this.plan = BookPlan.of(trial);
    this.basis = basis;
  }

  /**
   * What the findings of a trial rest on today.
   *
   * @throws InputException where its plan has faults
   */
  public static Basis basis(TrialShelf shelf, Sheet<TrialSheet> trial, LocalDate today) {
    List<TrialEventSheet> events = shelf.events(trial.id()).stream().map(Sheet::content).toList();
    boolean ended = isOver(trial.content(), today);
    return new Basis(
        trial.content(), events, shelf.readings(trial.id()), ended, shelf.past(trial.id()));
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
    return new BookFindings(basis).findings();
  }

  private Findings findings() {
    List<Reading> readings = basis.readings();
    TrialLayout layout = PlannedLayout.draw(plan);
    LaidTrial laid = PlannedLayout.of(plan, layout);
    Map<String, List<PlotReading>> byOutcome = new LinkedHashMap<>();
    TrialValues.of(layout, basis.events(), readings)
        .byOutcome()
        .forEach(
            (outcome, samples) ->
                byOutcome.put(
                    outcome.name(), samples.stream().map(BookFindings::plotReading).toList()));
    Findings found = Findings.of(facts(laid), laid.plots(), basis.past().outcomes(plan), byOutcome);
    TrialRecord record = new TrialRecord(basis, plan);
    return found.standing(record.standing(TrialGrounds.of(layout)));
  }

  private static PlotReading plotReading(CleanReading sample) {
    return new PlotReading(
        sample.plot(),
        sample.date().toString(),
        sample.date().toEpochDay(),
        sample.value(),
        sample.belowDetection());
  }

  private TrialFacts facts(LaidTrial laid) {
    return new TrialFacts(
        plan.name(),
        plan.question(),
        laid.design(),
        plan.treatments().factor(),
        laid.unitWord(),
        basis.past().contrasts(plan),
        plan.lawns().size(),
        (int) laid.plots().stream().map(Plot::unit).distinct().count(),
        basis.ended(),
        plan.observing().from().toEpochDay(),
        laid.randomisation(),
        new TrialRecord(basis, plan).kept());
  }
}
