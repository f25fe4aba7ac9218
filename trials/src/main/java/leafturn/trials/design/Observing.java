package leafturn.trials.design;

import java.time.LocalDate;
import java.util.List;

/**
 * What is observed, when, and what would leave an observation out.
 *
 * @param from first day of the season
 * @param to last day of it
 * @param dates of observations, in order
 * @param cores how soil is sampled
 * @param outcomes what is observed; exactly one is primary
 * @param exclusions rules that leave an observation out, in words, fixed beforehand
 */
public record Observing(
    LocalDate from,
    LocalDate to,
    List<LocalDate> dates,
    CoreRule cores,
    List<Outcome> outcomes,
    List<String> exclusions) {
  public Observing {
    dates = List.copyOf(dates);
    outcomes = List.copyOf(outcomes);
    exclusions = List.copyOf(exclusions);
  }

  /** Whether anything of a kind is observed. */
  public boolean has(Outcome.Kind kind) {
    return outcomes.stream().anyMatch(outcome -> outcome.kind() == kind);
  }
}
