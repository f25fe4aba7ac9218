package leafturn.records.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.records.exchange.TrialGround;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.records.sheet.TrialSheet;
import leafturn.trials.design.Design;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.BoxCox;
import leafturn.trials.observation.CleanReading;
import leafturn.trials.observation.Completeness;
import leafturn.trials.observation.Confounding;
import leafturn.trials.observation.ExperimentalUnits;
import leafturn.trials.observation.LaboratoryDuplicates;
import leafturn.trials.observation.Looks;
import leafturn.trials.observation.MethodChange;
import leafturn.trials.observation.Mishap;
import leafturn.trials.observation.MowingRecord;
import leafturn.trials.observation.NutrientForm;
import leafturn.trials.observation.ObservedPlot;
import leafturn.trials.observation.OutcomeReadings;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.ReadingKeys;
import leafturn.trials.observation.RecordedLayout;
import leafturn.trials.observation.Remark;
import leafturn.trials.observation.UnitChange;
import org.jspecify.annotations.Nullable;

/** Everything that is wrong or risky about a trial of the book, in sentences. */
public final class TrialChecks {
  /** Fewer values say nothing of how they scatter. */
  private static final int ENOUGH_FOR_A_POWER = 12;

  private final TrialSheet trial;
  private final TrialGround ground;
  private final List<Reading> readings;
  private final List<TrialEventSheet> events;
  private final boolean over;

  /**
   * @param trial with what is known of its past
   * @param over whether its season is over: what was not read by then will not be
   */
  public TrialChecks(
      TrialSheet trial,
      TrialGround ground,
      List<Reading> readings,
      List<TrialEventSheet> events,
      boolean over) {
    this.trial = trial;
    this.ground = ground;
    this.readings = readings;
    this.events = events;
    this.over = over;
  }

  /** What is to be said of a trial's readings and of what befell it. */
  public List<Remark> remarks() {
    return remarks(design(), trial.ended());
  }

  /**
   * The same beside findings, which tell an early end themselves, and few units where they test.
   */
  List<Remark> remarksBesideFindings() {
    List<Remark> design = design();
    ExperimentalUnits units = units();
    boolean told = units.isWarnedOfByTests() || units.judgesTreatments() && leavesOutAnything();
    if (over && told) {
      design.removeAll(units.remarks(readings.size()));
    }
    return remarks(design, null);
  }

  /** Then the units of the layout are more than those that the tests rest on. */
  private boolean leavesOutAnything() {
    return of(ground.plan().primary())
        .anyMatch(each -> events.stream().anyMatch(event -> TrialValues.leavesOut(event, each)));
  }

  private List<Remark> remarks(List<Remark> remarks, @Nullable LocalDate ended) {
    ground.plan().observing().outcomes().forEach(outcome -> remarks.addAll(outcome(outcome)));
    remarks.addAll(BagCodes.remarks(ground, readings));
    remarks.addAll(looks(ended));
    remarks.addAll(hindsight().remarks());
    remarks.addAll(handling());
    return List.copyOf(remarks);
  }

  /**
   * Why a trial gets no verdict: its layout and its primary outcome allow no analysis. Whether its
   * season is over is told elsewhere.
   */
  List<String> refusals() {
    List<Remark> remarks = design();
    remarks.addAll(outcome(ground.plan().primary()));
    remarks.addAll(handling());
    return remarks.stream()
        .filter(each -> each.weight() == Remark.Weight.REFUSED)
        .map(Remark::sentence)
        .distinct()
        .toList();
  }

  private ExperimentalUnits units() {
    boolean square = ground.plan().arrangement().design() == Design.LATIN_SQUARE;
    List<ObservedPlot> plots = over && !readings.isEmpty() ? read() : ground.plots();
    return square
        ? ExperimentalUnits.ofSquare(plots, ground.plan().treatments().arms().size())
        : ExperimentalUnits.of(plots);
  }

  private List<Remark> design() {
    List<Remark> remarks = new ArrayList<>(units().remarks(readings.size()));
    TrialSheet.Frozen frozen = trial.frozen();
    remarks.addAll(
        new RecordedLayout(
                ground.plan().seed(),
                frozen == null ? null : frozen.hash(),
                TrialPlanText.sha256(ground.plan()),
                frozen == null ? null : frozen.layout(),
                ground.layoutHash())
            .remarks());
    remarks.addAll(new Confounding(ground.plots()).remarks(List.of()));
    return remarks;
  }

  /** The plots of which the primary outcome was read: no other can judge a treatment. */
  private List<ObservedPlot> read() {
    Set<String> codes =
        of(ground.plan().primary())
            .filter(each -> events.stream().noneMatch(event -> TrialValues.leavesOut(event, each)))
            .map(Reading::plot)
            .collect(Collectors.toSet());
    return codes.isEmpty()
        ? ground.plots()
        : ground.plots().stream().filter(plot -> codes.contains(plot.code())).toList();
  }

  private Stream<Reading> of(Outcome outcome) {
    return readings.stream().filter(each -> each.outcome().equals(outcome.name()));
  }

  private List<Remark> outcome(Outcome outcome) {
    List<Remark> remarks = new ArrayList<>();
    List<Reading> own = of(outcome).toList();
    if (own.isEmpty()) {
      return remarks;
    }
    OutcomeReadings read = OutcomeReadings.of(outcome, own, null);
    read.faults().forEach(fault -> remarks.add(new Remark(Remark.Weight.REFUSED, fault)));
    read.doubts().forEach(doubt -> remarks.add(new Remark(Remark.Weight.WARNING, doubt)));
    remarks.addAll(ReadingKeys.remarks(own));
    remarks.addAll(MethodChange.remarks(own));
    remarks.addAll(UnitChange.remarks(outcome, read.readings()));
    remarks.addAll(Completeness.missing(ground.plots(), own));
    remarks.addAll(Completeness.areas(ground.plots(), outcome.unit()));
    remarks.addAll(NutrientForm.remarks(outcome, ground.plots(), read.readings()));
    remarks.addAll(confounded(own));
    LaboratoryDuplicates known = LaboratoryDuplicates.of(read.readings());
    LaboratoryDuplicates blind = known.blind(ground.dividedBags());
    remarks.addAll(known.remarks(blind, outcome.unit()));
    remarks.addAll(scale(outcome, blind.samples()));
    return remarks;
  }

  private List<Remark> confounded(List<Reading> own) {
    List<ObservedPlot> bare =
        ground.plots().stream()
            .map(plot -> ObservedPlot.of(plot.code(), plot.unit(), plot.arm()))
            .toList();
    return new Confounding(bare).remarks(own);
  }

  private List<Remark> scale(Outcome outcome, List<CleanReading> samples) {
    List<CleanReading> positive =
        samples.stream().filter(each -> !each.belowDetection() && each.value() > 0).toList();
    if (outcome.kind() == Outcome.Kind.RATING || positive.size() < ENOUGH_FOR_A_POWER) {
      return List.of();
    }
    try {
      BoxCox profile =
          BoxCox.profile(
              positive.stream().mapToDouble(CleanReading::value).toArray(),
              positive.stream().map(each -> arm(each) + " " + each.date()).toList());
      return List.of(profile.remark(outcome.name(), outcome.scale() == Outcome.Scale.LOG));
    } catch (IllegalArgumentException flat) {
      return List.of(
          new Remark(
              Remark.Weight.WARNING, "%s: %s.".formatted(outcome.name(), flat.getMessage())));
    }
  }

  private String arm(CleanReading reading) {
    return ground.plot(reading.plot()).map(ObservedPlot::arm).orElse("");
  }

  private List<Remark> looks(@Nullable LocalDate ended) {
    List<LocalDate> read = of(ground.plan().primary()).map(Reading::date).distinct().toList();
    return read.isEmpty()
        ? List.of()
        : new Looks(
                ground.plan().observing().dates(),
                ended,
                ground.plan().observing().outcomes().size(),
                ground.plan().treatments().contrasts().size())
            .remarks(read, over);
  }

  private TrialHindsight hindsight() {
    return new TrialHindsight(trial, ground.plan(), readings);
  }

  private List<Remark> handling() {
    List<MowingRecord> mowings = mowings(events);
    List<Remark> remarks = new ArrayList<>();
    remarks.addAll(MowingRecord.remarks(ground.plan().protocol(), mowings));
    remarks.addAll(MowingRecord.onOnePartOnly(mowings, ground.plots()));
    remarks.addAll(Mishap.remarks(mishaps(), ground.plots()));
    return remarks;
  }

  /** Mowings that were noted. */
  static List<MowingRecord> mowings(List<TrialEventSheet> events) {
    List<MowingRecord> mowings = new ArrayList<>();
    for (TrialEventSheet event : events) {
      if (event.what() == TrialEventSheet.Happening.MOWN) {
        TrialEventSheet.Mown mown =
            Objects.requireNonNullElse(
                event.mown(), new TrialEventSheet.Mown(null, null, null, null, null));
        mowings.add(
            new MowingRecord(
                event.day(),
                event.plots(),
                mown.sameDay(),
                mown.collectedFirst(),
                mown.deckCleaned(),
                mown.returnedHeightMm(),
                mown.collectedHeightMm()));
      }
    }
    return mowings;
  }

  /** What else was noted, with what was decided. */
  private List<Mishap> mishaps() {
    List<Mishap> mishaps = new ArrayList<>();
    for (TrialEventSheet event : events) {
      if (event.what() != TrialEventSheet.Happening.MOWN) {
        TrialEventSheet.Exclusion decided = event.exclusion();
        mishaps.add(
            new Mishap(
                event.day(),
                event.what().words(),
                event.plots(),
                event.areaM2(),
                decided == null
                    ? null
                    : new Mishap.Decision(
                        decided.leftOut(),
                        decided.blind(),
                        hindsight().doubt(event),
                        decided.leftOut() && !hindsight().leavesOutAnything(event))));
      }
    }
    return mishaps;
  }
}
