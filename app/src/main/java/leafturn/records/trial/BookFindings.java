package leafturn.records.trial;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import leafturn.records.InputException;
import leafturn.records.book.Sheet;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialPast;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.findings.Findings;
import leafturn.trials.findings.LaidTrial;
import leafturn.trials.findings.Plot;
import leafturn.trials.findings.PlotReading;
import leafturn.trials.findings.TrialFacts;
import leafturn.trials.observation.CleanReading;
import leafturn.trials.observation.Reading;
import org.jspecify.annotations.Nullable;

/** The findings of a trial of the book: plan, layout and readings brought together. */
public final class BookFindings {
  /**
   * All that findings rest on.
   *
   * @param trial the trial with its plan and all of its past
   * @param events what befell it
   * @param readings what was read
   * @param ended whether its season is over
   * @param zone in which the book counts its days
   * @param brought whether it came frozen from another book, in a package
   */
  public record Basis(
      TrialSheet trial,
      List<TrialEventSheet> events,
      List<Reading> readings,
      boolean ended,
      ZoneId zone,
      boolean brought) {
    public Basis {
      events = List.copyOf(events);
      readings = List.copyOf(readings);
    }

    /** Of a trial whose plan was frozen where it is kept. */
    public Basis(
        TrialSheet trial,
        List<TrialEventSheet> events,
        List<Reading> readings,
        boolean ended,
        ZoneId zone) {
      this(trial, events, readings, ended, zone, false);
    }

    /** What was changed and taken back. */
    TrialPast past() {
      return Objects.requireNonNullElse(trial.past(), TrialPast.UNKNOWN);
    }

    /** The trial as a data package carries it. */
    public PackedTrial packed() {
      return new PackedTrial(trial, events, readings);
    }
  }

  private final TrialSheet trial;
  private final TrialPlan plan;
  private final Basis basis;
  private final FrozenPlan frozen;

  private BookFindings(Basis basis) {
    this.trial = basis.trial();
    this.plan = BookPlan.of(trial);
    this.basis = basis;
    this.frozen = new FrozenPlan(basis.past(), plan);
  }

  /**
   * What the findings of a trial rest on today.
   *
   * @param zone in which the book counts its days
   * @throws InputException where its plan has faults
   */
  public static Basis basis(
      TrialShelf shelf, Sheet<TrialSheet> trial, LocalDate today, ZoneId zone) {
    List<TrialEventSheet> events = shelf.events(trial.id()).stream().map(Sheet::content).toList();
    boolean ended = isOver(trial.content(), today);
    TrialSheet whole = trial.content().with(shelf.past(trial, zone));
    boolean brought = shelf.cameFrozen(trial.id());
    return new Basis(whole, events, shelf.readings(trial.id()), ended, zone, brought);
  }

  /**
   * What the findings of a trial that is in no book rest on.
   *
   * @param zone in which its days are counted
   * @throws InputException where its plan has faults
   */
  public static Basis basis(PackedTrial packed, LocalDate today, ZoneId zone) {
    boolean ended = isOver(packed.trial(), today);
    boolean brought = packed.trial().frozen() != null;
    return new Basis(packed.trial(), packed.events(), packed.readings(), ended, zone, brought);
  }

  /** Whether the season of a trial is over. */
  public static boolean isOver(TrialSheet trial, LocalDate today) {
    return trial.ended() != null || today.isAfter(BookPlan.of(trial).observing().to());
  }

  /**
   * What a trial has found. Takes seconds for a trial of many readings: not for within a reading of
   * the book.
   *
   * @throws InputException where plan, layout or readings have faults
   * @throws TrialFaultException where there is nothing to analyse
   */
  public static Findings of(Basis basis) {
    return new BookFindings(basis).findings();
  }

  private Findings findings() {
    List<Reading> readings = basis.readings();
    TrialLayout layout = PlannedLayout.draw(plan);
    LaidTrial laid = PlannedLayout.of(plan, layout);
    TrialFacts facts = facts(layout, laid);
    Map<String, List<PlotReading>> kept = values(TrialValues.of(layout, basis.events(), readings));
    Findings found = Findings.of(facts, laid.plots(), frozen.outcomes(), kept);
    Findings withAll = withAll(layout, laid, facts);
    TrialRecord record = new TrialRecord(basis, plan);
    return (withAll == null ? found : found.beside(withAll))
        .standing(record.standing(TrialGrounds.of(layout)));
  }

  private static Map<String, List<PlotReading>> values(TrialValues values) {
    Map<String, List<PlotReading>> byOutcome = new LinkedHashMap<>();
    values
        .byOutcome()
        .forEach(
            (outcome, samples) ->
                byOutcome.put(
                    outcome.name(), samples.stream().map(BookFindings::plotReading).toList()));
    return byOutcome;
  }

  /**
   * What the primary outcome says with the readings that were left out, or taken back with results
   * in sight; null where none were, or where they cannot be analysed.
   */
  private @Nullable Findings withAll(TrialLayout layout, LaidTrial laid, TrialFacts facts) {
    List<Outcome> primary = frozen.outcomes().stream().filter(Outcome::primary).toList();
    boolean anyLeftOut =
        basis.readings().stream()
            .filter(each -> primary.stream().anyMatch(own -> own.name().equals(each.outcome())))
            .anyMatch(
                each ->
                    basis.events().stream().anyMatch(event -> TrialValues.leavesOut(event, each)));
    TakenBack takenBack = new TrialHindsight(basis.trial(), plan, basis.readings()).takenBack();
    if (!anyLeftOut && primary.stream().noneMatch(own -> takenBack.any(own.name()))) {
      return null;
    }
    try {
      TrialValues all = TrialValues.of(layout, List.of(), takenBack.putBack());
      return Findings.of(facts, laid.plots(), primary, values(all));
    } catch (InputException | TrialFaultException unusable) {
      return null;
    }
  }

  private static PlotReading plotReading(CleanReading sample) {
    return new PlotReading(
        sample.plot(),
        sample.date().toString(),
        sample.date().toEpochDay(),
        sample.value(),
        sample.belowDetection(),
        sample.limits());
  }

  /** Lawns of which something was read: of others nothing can be said. */
  private int yards(TrialLayout layout) {
    Set<String> read = basis.readings().stream().map(Reading::plot).collect(Collectors.toSet());
    long yards =
        layout.lawns().stream()
            .filter(lawn -> lawn.plots().stream().anyMatch(plot -> read.contains(plot.code())))
            .count();
    return Math.max(1, (int) yards);
  }

  private TrialFacts facts(TrialLayout layout, LaidTrial laid) {
    return new TrialFacts(
        plan.name(),
        plan.question(),
        laid.design(),
        plan.treatments().factor(),
        laid.unitWord(),
        frozen.contrasts(),
        yards(layout),
        (int) laid.plots().stream().map(Plot::unit).distinct().count(),
        basis.ended(),
        plan.observing().from().toEpochDay(),
        laid.randomisation(),
        new TrialRecord(basis, plan).kept());
  }
}
