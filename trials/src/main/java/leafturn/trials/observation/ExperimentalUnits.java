package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a treatment was given to, counted from the layout: cores, dates and raters measure a plot
 * more closely and are no further units.
 *
 * @param arms number of treatments
 * @param units yards, blocks or pairs that hold at least two of them
 * @param plots plots in those units
 * @param treatmentErrorDf degrees of freedom of the error that treatments are judged by
 */
public record ExperimentalUnits(int arms, int units, int plots, int treatmentErrorDf) {
  /** Fewer units than this see only very large effects. */
  public static final int FEW_UNITS = 5;

  /** Below so many degrees of freedom findings warn (judgement, no source). */
  public static final int FEW_DF = 5;

  /** Degrees of freedom that are wanted (habit of trials with plant protection, from memory). */
  public static final int WANTED_DF = 12;

  /**
   * Counts the units of a layout in which treatments are compared within units: plots - units -
   * (treatments - 1), which is (t - 1)(b - 1) for complete blocks and yards - 1 for split yards.
   *
   * @source hurlbert1984
   */
  public static ExperimentalUnits of(List<ObservedPlot> plots) {
    return of(plots, 0);
  }

  /**
   * As {@link #of(List)} for a Latin square, whose columns take degrees of freedom too: (t - 1)(t -
   * 2).
   *
   * @param columns of the square, t
   */
  public static ExperimentalUnits ofSquare(List<ObservedPlot> plots, int columns) {
    return of(plots, columns - 1);
  }

  private static ExperimentalUnits of(List<ObservedPlot> plots, int further) {
    Map<String, Set<String>> armsByUnit = new LinkedHashMap<>();
    Set<String> arms = new LinkedHashSet<>();
    for (ObservedPlot plot : plots) {
      armsByUnit.computeIfAbsent(plot.unit(), unit -> new LinkedHashSet<>()).add(plot.arm());
      arms.add(plot.arm());
    }
    armsByUnit.values().removeIf(held -> held.size() < 2);
    int units = armsByUnit.size();
    int counted =
        (int)
            plots.stream()
                .filter(plot -> armsByUnit.containsKey(plot.unit()))
                .map(plot -> plot.unit() + "\n" + plot.arm())
                .distinct()
                .count();
    int error = Math.max(0, counted - units - (arms.size() - 1) - further);
    return new ExperimentalUnits(arms.size(), units, counted, error);
  }

  /** Whether findings that test warn of how few the units are. */
  public boolean isWarnedOfByTests() {
    return judgesTreatments() && treatmentErrorDf < FEW_DF;
  }

  /** Whether a treatment can be judged at all. */
  public boolean judgesTreatments() {
    return treatmentErrorDf > 0;
  }

  /**
   * What follows for the analysis.
   *
   * @param readings how many readings there are, to say what they are not
   */
  public List<Remark> remarks(int readings) {
    List<Remark> remarks = new ArrayList<>();
    if (arms < 2) {
      remarks.add(Remark.refused("There is one treatment; nothing is compared with it."));
    } else if (!judgesTreatments()) {
      remarks.add(
          Remark.refused(
              "Treatments have no replicates (0 degrees of freedom): %s. The %,d readings measure"
                  + " these areas, not the treatment, so there is no p value; only the difference"
                  + " between the areas can be told.",
              together(), readings));
    } else {
      few(remarks);
    }
    return remarks;
  }

  private String together() {
    return switch (units) {
      case 0 -> "no unit holds two of them";
      case 1 -> "one unit holds them all once";
      default -> units + " units hold them together";
    };
  }

  private void few(List<Remark> remarks) {
    if (units < FEW_UNITS) {
      remarks.add(
          Remark.warning(
              "There are %d units; below %d, only very large effects can be seen, and more cores or"
                  + " dates do not help.",
              units, FEW_UNITS));
    }
    if (units >= FEW_UNITS && treatmentErrorDf < WANTED_DF) {
      remarks.add(
          Remark.note(
              "Treatments are judged on %d %s of freedom; %d or more are wanted.",
              treatmentErrorDf, treatmentErrorDf == 1 ? "degree" : "degrees", WANTED_DF));
    }
  }
}
