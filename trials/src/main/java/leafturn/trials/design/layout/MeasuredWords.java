package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import leafturn.trials.design.PlotRule;

/** What is said of plots of which little is measured. */
final class MeasuredWords {
  /** Less of a plot than this is edge and guard with a sliver between (common practice). */
  private static final double LEAST_FRACTION = 0.1;

  private MeasuredWords() {}

  /** Sentences for plots with too little to measure; none where all have enough. */
  static List<String> of(List<LaidPlot> plots) {
    List<String> notes = new ArrayList<>();
    List<LaidPlot> small =
        plots.stream()
            .filter(plot -> shown(measuredM2(plot)) < PlotRule.LEAST_MEASURED_M2)
            .toList();
    List<LaidPlot> slivers =
        plots.stream()
            .filter(plot -> !small.contains(plot))
            .filter(plot -> shown(measuredM2(plot)) < LEAST_FRACTION * shown(areaM2(plot)))
            .toList();
    if (!small.isEmpty()) {
      notes.add(
          String.format(
              Locale.ROOT,
              "Of %s less than %.0f m² is measured (%s), which is little to rate by eye or to take"
                  + " cores from (common practice, no source); longer or wider plots, fewer of them"
                  + " or another lawn give more.",
              plots(small),
              PlotRule.LEAST_MEASURED_M2,
              least(small)));
    }
    if (!slivers.isEmpty()) {
      notes.add(
          String.format(
              Locale.ROOT,
              "Of %s less than a tenth is measured (%s); the rest is edge and guard. Wider plots or"
                  + " another lawn give more.",
              plots(slivers),
              least(slivers)));
    }
    return notes;
  }

  private static String plots(List<LaidPlot> plots) {
    return plots.size() == 1 ? "plot " + plots.get(0).code() : plots.size() + " plots";
  }

  private static String least(List<LaidPlot> plots) {
    LaidPlot least =
        plots.stream().min(Comparator.comparingDouble(MeasuredWords::measuredM2)).orElseThrow();
    return String.format(
        Locale.ROOT,
        "%s: %.1f m² of %.1f m²",
        plots.size() == 1 ? "that is" : "least of " + least.code(),
        measuredM2(least),
        areaM2(least));
  }

  private static double measuredM2(LaidPlot plot) {
    return plot.place().measured().getArea();
  }

  /** An area as it is printed, to 0.1 m2: what reads 1.0 m2 is not told to be less than 1 m2. */
  private static double shown(double areaM2) {
    return Math.rint(10 * areaM2) / 10;
  }

  private static double areaM2(LaidPlot plot) {
    return plot.place().plot().getArea();
  }
}
