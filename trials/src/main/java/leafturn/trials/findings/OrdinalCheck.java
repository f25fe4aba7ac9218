package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.analysis.data.TrialTable;
import leafturn.trials.analysis.model.DegreesOfFreedom;
import leafturn.trials.analysis.model.RandomTerm;
import leafturn.trials.analysis.model.Term;
import leafturn.trials.analysis.model.TrialModel;
import leafturn.trials.analysis.ordinal.OrdinalAnalysis;

/**
 * Ratings taken as what they are, ordered classes: the check on their analysis as numbers.
 *
 * @param p of the treatment by a cumulative logit with units and dates fixed and plots random; NaN
 *     where it cannot be fitted
 * @param shareAtEnd the larger share of ratings in the lowest or highest class of the scale
 * @param notes on the fit
 */
public record OrdinalCheck(double p, double shareAtEnd, List<String> notes) {
  /** Beyond this share at one end, numbers mislead: the ordinal result counts. */
  public static final double MOST_AT_END = 0.25;

  private static final int MOST_CLASSES = 40;

  /** Whether the ratings could be fitted as classes. */
  public boolean isFitted() {
    return !Double.isNaN(p);
  }

  /** Whether so many ratings lie on one end that the ordinal result counts. */
  public boolean counts() {
    return shareAtEnd > MOST_AT_END;
  }

  /**
   * @param low lowest class of the scale; NaN for the lowest that was given
   * @param high highest class of the scale; NaN for the highest that was given
   */
  static OrdinalCheck of(
      TrialFacts facts, List<Plot> plots, List<PlotReading> ratings, double low, double high) {
    double[] values = ratings.stream().mapToDouble(PlotReading::value).toArray();
    double lowest = Double.isNaN(low) ? Arrays.stream(values).min().orElse(0) : low;
    double highest = Double.isNaN(high) ? Arrays.stream(values).max().orElse(0) : high;
    double share = Math.max(shareOf(values, lowest), shareOf(values, highest));
    try {
      OrdinalAnalysis analysis = OrdinalAnalysis.of(table(facts, plots, ratings), model(facts));
      OrdinalAnalysis.Test test = analysis.tests().get(0);
      String untested = test.untested();
      if (untested != null) {
        return unknown(share, untested);
      }
      List<String> notes =
          analysis.warnings().stream()
              .filter(note -> note.startsWith(facts.factor() + "["))
              .toList();
      return new OrdinalCheck(test.p(), share, notes);
    } catch (TrialFaultException cannot) {
      return unknown(share, cannot.faults().get(0));
    }
  }

  private static OrdinalCheck unknown(double share, String why) {
    String note = "The ratings could not be fitted as ordered classes: " + why;
    return new OrdinalCheck(Double.NaN, share, List.of(note));
  }

  private static double shareOf(double[] values, double end) {
    long at = IntStream.range(0, values.length).filter(i -> values[i] == end).count();
    return (double) at / values.length;
  }

  private static TrialTable table(TrialFacts facts, List<Plot> plots, List<PlotReading> ratings) {
    Map<String, Plot> byCode =
        plots.stream().collect(Collectors.toMap(Plot::code, plot -> plot, (a, b) -> a));
    List<List<String>> rows = new ArrayList<>();
    for (PlotReading rating : ratings) {
      Plot plot = byCode.get(rating.plot());
      if (plot != null) {
        rows.add(
            List.of(plot.unit(), plot.arm(), rating.date(), plot.code(), number(rating.value())));
      }
    }
    List<Integer> lines = Stream.iterate(2, line -> line + 1).limit(rows.size()).toList();
    if (rows.stream().map(row -> row.get(4)).distinct().count() > MOST_CLASSES) {
      throw new TrialFaultException(
          "there are more than %d different ratings, which are no classes."
              .formatted(MOST_CLASSES));
    }
    return new TrialTable(
        List.of(facts.unitWord(), facts.factor(), ModelColumns.DATE, "plot", "rating"),
        rows,
        lines);
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static TrialModel model(TrialFacts facts) {
    List<String> names = List.of(facts.factor(), ModelColumns.DATE, facts.unitWord());
    return new TrialModel(
        "rating",
        TrialModel.Scale.ORDINAL,
        names,
        List.of(),
        names.stream().map(name -> new Term(List.of(name))).toList(),
        true,
        List.of(RandomTerm.mean("plot")),
        null,
        DegreesOfFreedom.DESIGN,
        null,
        Map.of());
  }
}
