package leafturn.records.trial;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leafturn.records.exchange.TrialGround;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.observation.Reading;

/**
 * How much of what was planned has been read.
 *
 * @param read plots of an outcome and planned day that were read
 * @param planned plots of an outcome and planned day in all
 */
public record TrialProgress(int read, int planned) {
  private record Cell(String outcome, LocalDate day, String plot) {}

  /** What was read of a trial. */
  public static TrialProgress of(TrialGround ground, List<Reading> readings) {
    Set<Cell> read =
        readings.stream()
            .map(each -> new Cell(each.outcome(), each.date(), each.plot()))
            .collect(Collectors.toSet());
    List<Cell> planned =
        ground.plan().observing().outcomes().stream()
            .flatMap(outcome -> cells(ground, outcome))
            .toList();
    return new TrialProgress((int) planned.stream().filter(read::contains).count(), planned.size());
  }

  private static Stream<Cell> cells(TrialGround ground, Outcome outcome) {
    return TrialHindsight.plannedDays(ground.plan(), outcome).stream()
        .flatMap(
            day -> ground.plots().stream().map(plot -> new Cell(outcome.name(), day, plot.code())));
  }

  /** Whether every planned day of a trial is past. */
  public static boolean isPast(TrialPlan plan, LocalDate today) {
    LocalDate last =
        plan.observing().outcomes().stream()
            .flatMap(outcome -> TrialHindsight.plannedDays(plan, outcome).stream())
            .max(Comparator.naturalOrder())
            .orElse(plan.observing().to());
    return today.isAfter(last);
  }

  /** What it means once every planned day is past, for people. */
  public String words() {
    return "all planned days are past: %,d of %,d readings are in; %send the trial"
        .formatted(read, planned, read < planned ? "enter what is missing, then " : "");
  }
}
