package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
import leafturn.quantity.LabelNutrient;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * Whether a part of the values of P or K seems to be stated in another form than the rest: as the
 * oxide beside the element, a factor of 2.29 for P and 1.20 for K.
 */
public final class NutrientForm {
  /** Fewer pairs say little of how far they scatter: assumed. */
  private static final int FEWEST_PAIRS = 4;

  /** Standard errors within which a ratio is taken for the factor: assumed. */
  private static final double NEAR_SE = 2;

  /** Standard errors by which a ratio must lie away from 1: assumed. */
  private static final double FAR_SE = 4;

  /**
   * Share of the factor's logarithm within which a ratio is taken for it however little it
   * scatters, since dates and laboratories differ a little anyhow: assumed. That is 1.94 to 2.71
   * for P and 1.16 to 1.25 for K.
   */
  private static final double NEAR_SHARE = 0.2;

  private final Outcome outcome;
  private final LabelNutrient nutrient;
  private final Map<String, ObservedPlot> plots = new LinkedHashMap<>();
  private final List<CleanReading> readings;

  private NutrientForm(
      Outcome outcome,
      LabelNutrient nutrient,
      List<ObservedPlot> layout,
      List<CleanReading> readings) {
    this.outcome = outcome;
    this.nutrient = nutrient;
    layout.forEach(plot -> plots.put(plot.code(), plot));
    this.readings =
        readings.stream()
            .filter(each -> !each.belowDetection() && each.value() > 0)
            .filter(each -> plots.containsKey(each.plot()))
            .toList();
  }

  /**
   * What is to be said of the form of an outcome's values.
   *
   * @param readings of the outcome, in its unit
   */
  public static List<Remark> remarks(
      Outcome outcome, List<ObservedPlot> layout, List<CleanReading> readings) {
    LabelNutrient nutrient = UsualRange.nutrient(outcome);
    if (nutrient == null) {
      return List.of();
    }
    NutrientForm form = new NutrientForm(outcome, nutrient, layout, readings);
    List<Remark> remarks = new ArrayList<>(form.untold(readings));
    remarks.addAll(form.apart("date", each -> each.date().toString(), CleanReading::plot));
    remarks.addAll(form.apart("laboratory", each -> each.given().laboratory(), form::unit));
    remarks.addAll(form.apart("treatment", form::arm, form::unit));
    return remarks;
  }

  private List<Remark> untold(List<CleanReading> all) {
    ReadingUnit planned = ReadingUnit.of(outcome.unit());
    if (planned.nutrient() == null) {
      return List.of();
    }
    List<String> units = new ArrayList<>();
    for (CleanReading reading : all) {
      String unit = reading.given().unit();
      if (unit != null && ReadingUnit.of(unit).nutrient() == null) {
        units.add(unit);
      }
    }
    return units.isEmpty()
        ? List.of()
        : List.of(
            Remark.warning(
                "%s: %d of %d values say %s and not whether of %s or %s; they are taken as %s, the"
                    + " unit of the plan. Ask the laboratory.",
                outcome.name(),
                units.size(),
                all.size(),
                units.get(0),
                nutrient.elementSymbol(),
                nutrient.oxideSymbol(),
                outcome.unit()));
  }

  private String unit(CleanReading reading) {
    ObservedPlot plot = plots.get(reading.plot());
    return plot == null ? "" : plot.unit();
  }

  private String arm(CleanReading reading) {
    ObservedPlot plot = plots.get(reading.plot());
    return plot == null ? "" : plot.arm();
  }

  /** Levels whose values lie from those of all others by the factor, within the same pair. */
  private List<Remark> apart(
      String what,
      Function<CleanReading, @Nullable String> level,
      Function<CleanReading, String> pair) {
    TreeSet<String> levels = new TreeSet<>();
    readings.stream().map(level).filter(Objects::nonNull).forEach(levels::add);
    List<Remark> remarks = new ArrayList<>();
    for (String one : levels) {
      Remark remark = levels.size() < 2 ? null : apart(what, one, level, pair);
      if (remark != null) {
        remarks.add(remark);
      }
      if (levels.size() == 2) {
        break; // the other is the same comparison
      }
    }
    return remarks;
  }

  private @Nullable Remark apart(
      String what,
      String one,
      Function<CleanReading, @Nullable String> level,
      Function<CleanReading, String> pair) {
    Map<String, double[]> sums = new LinkedHashMap<>();
    for (CleanReading reading : readings) {
      String own = level.apply(reading);
      if (own != null) {
        double[] sum = sums.computeIfAbsent(pair.apply(reading), key -> new double[4]);
        int at = own.equals(one) ? 0 : 2;
        sum[at] += Math.log(reading.value());
        sum[at + 1]++;
      }
    }
    double[] logs =
        sums.values().stream()
            .filter(sum -> sum[1] > 0 && sum[3] > 0)
            .mapToDouble(sum -> sum[0] / sum[1] - sum[2] / sum[3])
            .toArray();
    double mean = java.util.Arrays.stream(logs).average().orElse(0);
    return isFactor(logs, mean)
        ? Remark.warning(
            "%s: the values of %s %s are %.2f times the others, as if a part were %s and a part %s"
                + " (a factor of %.2f); look in what form each is stated.",
            outcome.name(),
            what,
            one,
            Math.exp(mean),
            nutrient.oxideSymbol(),
            nutrient.elementSymbol(),
            nutrient.oxideFromElement(1))
        : null;
  }

  private boolean isFactor(double[] logs, double mean) {
    if (logs.length < FEWEST_PAIRS) {
      return false;
    }
    double squares = 0;
    for (double log : logs) {
      squares += (log - mean) * (log - mean);
    }
    double se = Math.sqrt(squares / (logs.length - 1) / logs.length);
    double factor = Math.log(nutrient.oxideFromElement(1));
    double from = Math.abs(Math.abs(mean) - factor);
    return from <= Math.max(NEAR_SHARE * factor, NEAR_SE * se) && Math.abs(mean) >= FAR_SE * se;
  }
}
