package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.List;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.paired.PairedDifference;
import leafturn.trials.design.Contrast;
import org.jspecify.annotations.Nullable;

/**
 * The season's difference in each unit that has one plot of both arms.
 *
 * @param units that have both
 * @param firstPlots codes of their plots with the first arm
 * @param first summaries of the first arm
 * @param second summaries of the second arm
 */
public record PairedSeason(
    Contrast contrast,
    List<String> units,
    List<String> firstPlots,
    double[] first,
    double[] second) {

  static PairedSeason of(Contrast contrast, SeasonTable table, double[] summaries) {
    List<String> units = new ArrayList<>();
    List<String> plots = new ArrayList<>();
    List<Double> first = new ArrayList<>();
    List<Double> second = new ArrayList<>();
    for (String unit : table.units()) {
      int one = table.plotWith(unit, contrast.first());
      int other = table.plotWith(unit, contrast.second());
      if (one >= 0
          && other >= 0
          && !Double.isNaN(summaries[one])
          && !Double.isNaN(summaries[other])) {
        units.add(unit);
        plots.add(table.plots().get(one).code());
        first.add(summaries[one]);
        second.add(summaries[other]);
      }
    }
    return new PairedSeason(contrast, units, plots, array(first), array(second));
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** First less second, for each unit. */
  public double[] differences() {
    double[] differences = new double[first.length];
    for (int i = 0; i < differences.length; i++) {
      differences[i] = first[i] - second[i];
    }
    return differences;
  }

  /** The paired t test; null where there is nothing to judge by, the reason being noted. */
  @Nullable PairedDifference test(List<String> notes) {
    try {
      return PairedDifference.of(differences());
    } catch (TrialFaultException nothing) {
      notes.addAll(nothing.faults());
      return null;
    }
  }

  /** The same without one unit. */
  PairedSeason without(int left) {
    List<String> keptUnits = new ArrayList<>(units);
    List<String> keptPlots = new ArrayList<>(firstPlots);
    keptUnits.remove(left);
    keptPlots.remove(left);
    return new PairedSeason(
        contrast, keptUnits, keptPlots, without(first, left), without(second, left));
  }

  private static double[] without(double[] values, int left) {
    double[] kept = new double[values.length - 1];
    for (int i = 0; i < kept.length; i++) {
      kept[i] = values[i < left ? i : i + 1];
    }
    return kept;
  }
}
