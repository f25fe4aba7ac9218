package leafturn.records.exchange;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leafturn.records.Faults;
import leafturn.records.table.Table;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.observation.ObservedPlot;
import leafturn.trials.observation.ReadingKeys;
import org.jspecify.annotations.Nullable;

/**
 * A trial as it lies on the ground: its plan, its plots and the codes on the bags of its samples.
 *
 * @param plan the plan
 * @param plots in the order of the layout
 * @param bags what each code on a bag stands for
 * @param walks codes of the plots in the order of the walk, for each planned day
 * @param layoutHash SHA-256 of the layout: which plot lies where and has which treatment
 */
public record TrialGround(
    TrialPlan plan,
    List<ObservedPlot> plots,
    Map<String, Bag> bags,
    Map<LocalDate, List<String>> walks,
    String layoutHash) {
  public TrialGround {
    plots = List.copyOf(plots);
    bags = Map.copyOf(bags);
    walks = Map.copyOf(walks);
  }

  /** The plots in the order in which they are rated and sampled on a day. */
  public List<ObservedPlot> walk(LocalDate day) {
    List<String> codes = walks.get(day);
    return codes == null
        ? plots
        : codes.stream().map(this::plot).flatMap(Optional::stream).toList();
  }

  /**
   * A bag with a sample.
   *
   * @param holds {@link Outcome.Kind#SOIL} or {@link Outcome.Kind#TISSUE}
   * @param plot code of the plot
   * @param date day of sampling
   * @param duplicateOf code of the bag that was divided, for a blind duplicate; else null
   */
  public record Bag(Outcome.Kind holds, String plot, LocalDate date, @Nullable String duplicateOf) {
    /** Reports a row that tells another plot or day of this bag's sample, and says whether so. */
    boolean disagrees(String toldPlot, LocalDate toldDate, Table.Row row, Findings faults) {
      boolean same = plot.equalsIgnoreCase(toldPlot.strip()) && date.equals(toldDate);
      if (!same) {
        faults.add(
            row,
            "its bag holds a sample of plot %s on %s, but the row tells plot %s on %s; put one right."
                .formatted(plot, date, toldPlot, toldDate));
      }
      return !same;
    }
  }

  /** Of each blind duplicate the code of the bag that was divided, by its own code. */
  public Map<String, String> dividedBags() {
    Map<String, String> divided = new HashMap<>();
    bags.forEach(
        (code, bag) -> {
          if (bag.duplicateOf() != null) {
            divided.put(code, bag.duplicateOf());
          }
        });
    return divided;
  }

  /** The plot of a code, whatever its case. */
  public Optional<ObservedPlot> plot(String code) {
    return plots.stream().filter(plot -> plot.code().equalsIgnoreCase(code.strip())).findFirst();
  }

  /** The outcome of a name, whatever its case. */
  public Optional<Outcome> outcome(String name) {
    return plan.observing().outcomes().stream()
        .filter(outcome -> outcome.name().equalsIgnoreCase(name.strip()))
        .findFirst();
  }

  /** Says that a name is none of an outcome. */
  String noOutcome(String name) {
    List<String> names = plan.observing().outcomes().stream().map(Outcome::name).toList();
    return "%s is no outcome of the plan; it has %s."
        .formatted(Faults.quoted(name), String.join(", ", names));
  }

  /** Says that a code is none of a plot. */
  String noPlot(String code) {
    return "%s is no plot of the layout; it has %s to %s."
        .formatted(Faults.quoted(code), plots.get(0).code(), plots.get(plots.size() - 1).code());
  }

  /** What a code on a bag stands for, or null. */
  public @Nullable Bag bag(String code) {
    return bags.get(ReadingKeys.code(code));
  }
}
