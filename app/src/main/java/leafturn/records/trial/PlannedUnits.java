package leafturn.records.trial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.design.Design;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.findings.AskedTrial;
import org.jspecify.annotations.Nullable;

/**
 * How many units a planned trial began with, and what became of those the table does not tell of.
 *
 * @param started as the model says, else the lawns of a plan that splits them where the table has
 *     fewer; null where all are in the table
 * @param deviations from the plan that the model tells, and the lawns without a reading
 */
record PlannedUnits(@Nullable Integer started, List<String> deviations) {

  static PlannedUnits of(TrialPlan plan, AskedTrial asked, TrialTable table) {
    List<String> deviations = new ArrayList<>(asked.record().deviations());
    Integer started = asked.scope().started();
    if (plan.arrangement().design() != Design.SPLIT_YARD
        || !table.has(asked.columns().unit())
        || !table.has(asked.outcome().name())) {
      return new PlannedUnits(started, deviations);
    }
    Set<String> read = read(asked, table);
    int planned = plan.lawns().size();
    if (read.size() < planned) {
      deviations.add(unread(plan, read));
      started = started == null ? planned : started;
    }
    return new PlannedUnits(started, deviations);
  }

  private static Set<String> read(AskedTrial asked, TrialTable table) {
    String[] units = table.cells(asked.columns().unit());
    String[] values = table.cells(asked.outcome().name());
    Set<String> read = new LinkedHashSet<>();
    for (int row = 0; row < units.length; row++) {
      if (!values[row].isEmpty()) {
        read.add(units[row]);
      }
    }
    return read;
  }

  private static String unread(TrialPlan plan, Set<String> read) {
    List<String> missing =
        plan.lawns().stream().map(TrialLawn::name).filter(name -> !read.contains(name)).toList();
    return missing.size() + read.size() == plan.lawns().size()
        ? "The table has no reading of %s, which the plan has."
            .formatted(String.join(", ", missing))
        : "The plan has %d lawns, the table readings of %d."
            .formatted(plan.lawns().size(), read.size());
  }
}
