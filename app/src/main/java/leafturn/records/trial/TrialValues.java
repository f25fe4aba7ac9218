package leafturn.records.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import leafturn.records.sheet.TrialEventSheet;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.TrialLayout;
import leafturn.trials.design.layout.Unit;
import leafturn.trials.findings.Plot;
import leafturn.trials.observation.CleanReading;
import leafturn.trials.observation.LaboratoryDuplicates;
import leafturn.trials.observation.OutcomeReadings;
import leafturn.trials.observation.Reading;

/**
 * The values that the findings of a trial rest on: one for each sample, in the unit of its outcome,
 * duplicates averaged, without those of plots that were left out.
 *
 * @param byOutcome in the order of the plan
 */
public record TrialValues(Map<Outcome, List<CleanReading>> byOutcome) {
  /**
   * The values of readings.
   *
   * @param events what befell the trial
   * @throws InputException with a sentence for each reading that cannot be used
   */
  public static TrialValues of(
      TrialLayout layout, List<TrialEventSheet> events, List<Reading> readings) {
    List<Reading> kept =
        readings.stream()
            .filter(each -> events.stream().noneMatch(event -> leavesOut(event, each)))
            .toList();
    List<String> faults = new ArrayList<>();
    Map<Outcome, List<CleanReading>> byOutcome = new LinkedHashMap<>();
    for (Outcome outcome : layout.plan().observing().outcomes()) {
      OutcomeReadings read = OutcomeReadings.of(outcome, kept, null);
      faults.addAll(read.faults());
      byOutcome.put(
          outcome, LaboratoryDuplicates.of(read.readings()).blind(layout.dividedBags()).samples());
    }
    if (!faults.isEmpty()) {
      throw new InputException(faults);
    }
    return new TrialValues(byOutcome);
  }

  /** A plot that was left out after something befell it is left out from that day on. */
  static boolean leavesOut(TrialEventSheet event, Reading reading) {
    TrialEventSheet.Exclusion decided = event.exclusion();
    return decided != null
        && decided.leftOut()
        && !reading.date().isBefore(event.day())
        && (event.plots().isEmpty() || event.plots().contains(reading.plot()));
  }

  /** The plots of a layout as findings know them. */
  public static List<Plot> plots(TrialLayout layout) {
    return layout.plots().stream().map(plot -> plot(layout.plan(), plot)).toList();
  }

  private static Plot plot(TrialPlan plan, LaidPlot laid) {
    Unit unit = laid.unit();
    return new Plot(
        laid.code(),
        unitName(plan, unit),
        unit.arm(),
        unit.secondArm(),
        Integer.toString(unit.row()),
        Integer.toString(unit.column()));
  }

  private static String unitName(TrialPlan plan, Unit unit) {
    return switch (plan.arrangement().design()) {
      case SPLIT_YARD, LISTED, LATIN_SQUARE -> plan.lawns().get(unit.lawn()).name();
      case RANDOMISED_BLOCK, SPLIT_PLOT, STRIP_PLOT -> "block " + unit.block();
      case PAIRED_STRIPS -> "pair " + unit.block();
    };
  }
}
