package leafturn.reports.trial;

import java.time.LocalDate;
import java.util.List;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.Bag;
import leafturn.trials.design.layout.TrialLayout;

/** Bags of leaves for a laboratory, as the sheet of a walk tells them. */
final class LeafBags {
  /** How leaves are taken (common practice, no source). */
  static final String HOW =
      "Leaves for the laboratory, before the lawn is mown: clip blades from all over the measured"
          + " part of the plot with clean shears, above the thatch, a full handful and no soil, into"
          + " a paper bag with the code of the list; keep the bags cool and dry.";

  private LeafBags() {}

  /** The code on the bag of a plot, or both where it is divided. */
  static String of(TrialLayout layout, String plot, LocalDate date) {
    List<String> codes =
        layout.bags().stream()
            .filter(
                bag ->
                    bag.holds() == Outcome.Kind.TISSUE
                        && bag.plot().equals(plot)
                        && bag.date().equals(date))
            .map(Bag::code)
            .toList();
    return String.join(" and ", codes);
  }
}
