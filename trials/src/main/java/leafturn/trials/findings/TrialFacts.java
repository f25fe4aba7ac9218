package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.design.Contrast;
import org.jspecify.annotations.Nullable;

/**
 * What was fixed before a trial began, as far as its findings rest on it.
 *
 * @param name of the trial
 * @param question it asks; may be empty
 * @param design how plots lie in units
 * @param factor name of the treatment factor, as practice
 * @param unitWord what a unit is called, as yard
 * @param contrasts planned comparisons, the main one first
 * @param yards how many separate yards or sites the units lie in
 * @param unitsStarted units that the trial began with
 * @param ended whether the season is over; before, only descriptive data are given
 * @param seasonFrom first day of the season as a number of days; readings before it are baseline;
 *     NaN where none is known
 * @param randomisation how the layout was drawn
 * @param record what was kept of the plan
 */
public record TrialFacts(
    String name,
    String question,
    Design design,
    String factor,
    String unitWord,
    List<Contrast> contrasts,
    int yards,
    int unitsStarted,
    boolean ended,
    double seasonFrom,
    Randomisation randomisation,
    PlanRecord record) {

  /** How plots lie in units. */
  public enum Design {
    /** Every unit holds every arm once. */
    UNITS,
    /** Rows and columns each hold every arm once. */
    LATIN_SQUARE,
    /** Main plots within units, each split for a second factor. */
    SPLIT_PLOT,
    /** Strips of one factor across those of another, within units. */
    STRIP_PLOT,
    /** Plots without units, drawn from a list of allowed layouts. */
    LISTED
  }

  /** How the arms came to the plots of a unit. */
  public enum Sides {
    /** By chance in each unit, or in each set of units that were drawn together. */
    FREE,
    /** Each arm on each side equally often. */
    BALANCED,
    /** By a layout drawn from a list. */
    LISTED,
    /** In another way, as the design says. */
    OTHER
  }

  /**
   * How the layout was drawn.
   *
   * @param seed null where none is known
   * @param sides how the arms came to the plots of a unit
   * @param plots codes in the order of the layouts; on a split yard the first of two is one side,
   *     the second the other
   * @param allowed the layouts one of which was drawn, an arm for each plot; empty where none were
   *     listed
   * @param together sets of units whose arms one coin decided, as two pairs laid as ABBA or BAAB; a
   *     unit in none of them was drawn by itself
   */
  public record Randomisation(
      @Nullable Long seed,
      Sides sides,
      List<String> plots,
      List<List<String>> allowed,
      List<List<String>> together) {
    /** Sides drawn freely, or nothing known. */
    public static Randomisation free(@Nullable Long seed) {
      return new Randomisation(seed, Sides.FREE, List.of(), List.of(), List.of());
    }

    public Randomisation {
      plots = List.copyOf(plots);
      together = together.stream().map(List::copyOf).toList();
      allowed = allowed.stream().map(List::copyOf).toList();
      for (List<String> layout : allowed) {
        if (layout.size() != plots.size()) {
          throw new TrialFaultException(
              "An allowed layout names %d arms for %d plots; each plot has one."
                  .formatted(layout.size(), plots.size()));
        }
      }
    }
  }

  /**
   * What was kept of the plan.
   *
   * @param hash of the plan as it was frozen; null where none is known
   * @param deviations from it, in sentences
   * @param exclusionRules fixed beforehand
   */
  public record PlanRecord(
      @Nullable String hash, List<String> deviations, List<String> exclusionRules) {
    /** Nothing was kept. */
    public static final PlanRecord NONE = new PlanRecord(null, List.of(), List.of());

    public PlanRecord {
      deviations = List.copyOf(deviations);
      exclusionRules = List.copyOf(exclusionRules);
    }
  }

  public TrialFacts {
    contrasts = List.copyOf(contrasts);
    List<String> faults = new ArrayList<>();
    if (contrasts.isEmpty()) {
      faults.add("No comparison is planned; name two arms to compare.");
    }
    for (Contrast contrast : contrasts) {
      if (contrast.first().equals(contrast.second())) {
        faults.add("An arm is compared with itself: %s.".formatted(contrast.first()));
      }
    }
    if (yards < 1 || unitsStarted < 1) {
      faults.add(
          "A trial has at least one yard and one unit, not %d and %d."
              .formatted(yards, unitsStarted));
    }
    if (!faults.isEmpty()) {
      throw new TrialFaultException(faults);
    }
  }

  /** The comparison that the trial is about. */
  public Contrast mainContrast() {
    return contrasts.get(0);
  }
}
