package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.analysis.paired.SeasonSummary;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * One number for the season of each plot. The plots of a unit are summed up over the dates they
 * share, so that none has a season of its own; a unit that cannot be is left out, with the reason.
 *
 * @param values one for each plot of the table; NaN where its unit is left out
 * @param leftOut why, in sentences
 * @param notes on units summed up over fewer dates
 */
record PlotSummaries(double[] values, List<String> leftOut, List<String> notes) {

  static PlotSummaries of(SeasonTable table, Outcome outcome, String unitWord) {
    double[] values = new double[table.plots().size()];
    Arrays.fill(values, Double.NaN);
    List<String> leftOut = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    SeasonSummary summary = summary(outcome, table.dates().size());
    for (String unit : table.units()) {
      List<Integer> plots = table.plotsOf(unit);
      int[] shared = shared(table, plots);
      String why = why(summary, table, shared);
      if (why != null) {
        leftOut.add("%s is left out: %s.".formatted(named(unitWord, unit), why));
        continue;
      }
      if (shared.length < table.dates().size()) {
        notes.add(
            "%s: the season is summed up over the %d of %d dates on which each of its plots was read."
                .formatted(named(unitWord, unit), shared.length, table.dates().size()));
      }
      double[] days = Arrays.stream(shared).mapToDouble(date -> table.days()[date]).toArray();
      for (int plot : plots) {
        double[] own = table.values()[plot];
        values[plot] =
            summary.of(days, Arrays.stream(shared).mapToDouble(date -> own[date]).toArray());
      }
    }
    return new PlotSummaries(values, leftOut, notes);
  }

  /** How a season is summed up; with a single date its value is all there is. */
  static SeasonSummary summary(Outcome outcome, int dates) {
    if (dates < 2) {
      return SeasonSummary.LAST;
    }
    return switch (outcome.summary()) {
      case SEASON_MEAN -> SeasonSummary.MEAN;
      case SLOPE -> SeasonSummary.SLOPE;
      case LAST_DATE -> SeasonSummary.LAST;
    };
  }

  private static String named(String unitWord, String unit) {
    return unit.startsWith(unitWord) ? unit : unitWord + " " + unit;
  }

  private static int[] shared(SeasonTable table, List<Integer> plots) {
    return IntStream.range(0, table.dates().size())
        .filter(date -> plots.stream().noneMatch(plot -> Double.isNaN(table.values()[plot][date])))
        .toArray();
  }

  private static @Nullable String why(SeasonSummary summary, SeasonTable table, int[] shared) {
    int last = table.dates().size() - 1;
    if (shared.length == 0) {
      return "there is no date on which each of its plots was read";
    }
    if (summary == SeasonSummary.LAST && shared[shared.length - 1] != last) {
      return "not each of its plots was read on %s, the last date"
          .formatted(table.dates().get(last));
    }
    if (summary != SeasonSummary.LAST && shared.length < 2) {
      return "its plots share one date only, and a season needs two";
    }
    return null;
  }
}
