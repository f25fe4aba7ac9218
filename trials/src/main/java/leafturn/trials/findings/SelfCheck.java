package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.TrialAnalysis;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.inference.MarginalTests;
import leafturn.trials.analysis.paired.PairedDifference;
import org.jspecify.annotations.Nullable;

/**
 * In balanced data two ways must lead to one result: the season's difference by pairs and by the
 * model of all dates, and the paired t test and the mixed model of the seasons.
 *
 * @param byPairs the season's difference by pairs
 * @param byDates the same by the model of all dates; NaN where there is none
 * @param tSquared of the paired test
 * @param f of the mixed model of the seasons; NaN where its variance of units is held at zero
 * @param holds whether they agree to 1 part in 1,000,000
 */
public record SelfCheck(double byPairs, double byDates, double tSquared, double f, boolean holds) {
  private static final double SAME = 1e-6;

  /**
   * The check; null where the data are not balanced, so that the two need not agree.
   *
   * @param notes get a sentence where a part cannot be checked
   */
  static @Nullable SelfCheck of(
      ModelColumns columns,
      double[] summaries,
      PairedDifference pairs,
      @Nullable DatesModel dates,
      List<String> notes) {
    if (!columns.table().isComplete() || columns.hasBaseline()) {
      return null;
    }
    double byDates = dates == null ? Double.NaN : dates.differences().get(0).season();
    double f = seasonsF(columns, summaries, pairs, notes);
    double tSquared = pairs.t() * pairs.t();
    boolean sameDifference =
        Double.isNaN(byDates) || Math.abs(byDates - pairs.mean()) <= SAME * pairs.sd();
    boolean sameTest = Double.isNaN(f) || Math.abs(f - tSquared) <= SAME * (1 + tSquared);
    return new SelfCheck(pairs.mean(), byDates, tSquared, f, sameDifference && sameTest);
  }

  private static double seasonsF(
      ModelColumns columns, double[] summaries, PairedDifference pairs, List<String> notes) {
    try {
      TrialAnalysis analysis = TrialAnalysis.of(columns.bySeason(summaries), columns.ofSeasons());
      if (!analysis.fit().boundary().isEmpty()) {
        notes.add(
            "Plots of one %s are no more alike than any others, so that the mixed model of the seasons and the paired test need not agree; the paired result stands."
                .formatted(columns.facts().unitWord()));
        return Double.NaN;
      }
      List<MarginalTests.Test> tests = new ArrayList<>(analysis.tests());
      boolean sameDf = Math.abs(tests.get(0).denominatorDf() - pairs.df()) < 1e-3;
      return sameDf ? tests.get(0).f() : Double.POSITIVE_INFINITY;
    } catch (TrialFaultException cannot) {
      return Double.NaN;
    }
  }
}
