package leafturn.trials.findings;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import leafturn.trials.analysis.paired.SignFlipTest;
import leafturn.trials.design.Contrast;
import leafturn.trials.design.layout.CyclicSquares;
import leafturn.trials.findings.TrialFacts.Design;
import leafturn.trials.findings.TrialFacts.Randomisation;
import leafturn.trials.findings.TrialFacts.Sides;
import org.jspecify.annotations.Nullable;

/**
 * The test by the layouts that might have been drawn: if the treatment does nothing, each of them
 * would have shown the same values under other names.
 *
 * @param p share of the layouts with a difference at least as large
 * @param layouts how many might have been drawn; of a sample, how many it has, the trial's own with
 *     them
 * @param smallestP that these layouts can give to the one that was drawn, whatever is measured
 * @param listed whether they come from a stored list
 * @param sampled whether they are a sample, since there are too many to go through
 * @source fisher1935, section 21
 */
public record RandomisationTest(
    double p, long layouts, double smallestP, boolean listed, boolean sampled) {
  /** Sums this close count as equal: they differ by rounding alone. */
  static final double SAME = 1e-9;

  /** Layouts of a sample, the trial's own with them. */
  static final int IN_SAMPLE = CyclicSquares.IN_SAMPLE;

  /**
   * The test of the main comparison by the rule that drew the layout: where units were given out
   * one by one, the two arms change places within units and the others stay; in a Latin square and
   * by a list all arms are drawn anew. Null where the rule or the places of the plots are not
   * known.
   *
   * @param values of each plot's season; NaN where its unit is left out
   */
  static @Nullable RandomisationTest of(TrialFacts facts, SeasonTable table, double[] values) {
    Randomisation drawn = facts.randomisation();
    Contrast contrast = facts.mainContrast();
    if (drawn.sides() == Sides.LISTED) {
      return ofList(contrast, table, values, drawn);
    }
    long seed = Objects.requireNonNullElse(drawn.seed(), 0L);
    if (facts.design() == Design.LATIN_SQUARE) {
      return SquareLayouts.test(contrast, table, values, seed);
    }
    if (facts.design() == Design.LISTED || drawn.sides() == Sides.OTHER) {
      return null;
    }
    if (drawn.sides() == Sides.BALANCED && !drawn.plots().isEmpty()) {
      PairedSeason pairs = PairedSeason.of(contrast, table, values);
      return pairs.units().size() > SignFlipTest.MOST_YARDS ? null : balanced(pairs, table, drawn);
    }
    return SwappedArms.of(contrast, table, values, drawn.together()).test(seed);
  }

  /** From a sample, in which the trial's own layout counts as well. */
  static RandomisationTest ofSample(long extreme) {
    return new RandomisationTest(
        (extreme + 1.0) / IN_SAMPLE, IN_SAMPLE, 1.0 / IN_SAMPLE, false, true);
  }

  /** Each arm on each side equally often; in an odd number of units, but for one. */
  private static RandomisationTest balanced(
      PairedSeason pairs, SeasonTable table, Randomisation drawn) {
    double[] differences = pairs.differences();
    int units = differences.length;
    double[] bySide = new double[units];
    for (int i = 0; i < units; i++) {
      List<Integer> plots = table.plotsOf(pairs.units().get(i));
      String first = firstOf(drawn, plots.stream().map(k -> table.plots().get(k)).toList());
      bySide[i] = pairs.contrast().first().equals(first) ? differences[i] : -differences[i];
    }
    double bound = bound(differences);
    long extreme = 0;
    long layouts = 0;
    for (long pattern = 0; pattern < 1L << units; pattern++) {
      if (Math.abs(2 * Long.bitCount(pattern) - units) > 1) {
        continue;
      }
      double sum = 0;
      for (int i = 0; i < units; i++) {
        sum += (pattern >> i & 1) == 1 ? bySide[i] : -bySide[i];
      }
      layouts++;
      extreme += Math.abs(sum) >= bound ? 1 : 0;
    }
    return new RandomisationTest(
        (double) extreme / layouts, layouts, Math.min(1, 2.0 / layouts), false, false);
  }

  private static String firstOf(Randomisation drawn, List<Plot> plots) {
    return plots.stream()
        .min((a, b) -> Integer.compare(placeOf(drawn, a), placeOf(drawn, b)))
        .map(Plot::arm)
        .orElse("");
  }

  private static int placeOf(Randomisation drawn, Plot plot) {
    return drawn.plots().indexOf(plot.code());
  }

  private static double bound(double[] differences) {
    double sum = 0;
    double size = 0;
    for (double difference : differences) {
      sum += difference;
      size += Math.abs(difference);
    }
    return Math.abs(sum) - SAME * size;
  }

  /** Whether the stored list is too short to show a difference, whatever is measured. */
  public boolean leavesOpen() {
    return listed && canShowNothing();
  }

  /** Whether the layouts are too few to show a difference, whatever is measured. */
  public boolean canShowNothing() {
    return smallestP > Effect.ALPHA;
  }

  /**
   * The difference of the arms' means over the listed layouts; null where they know not the plots.
   */
  private static @Nullable RandomisationTest ofList(
      Contrast contrast, SeasonTable table, double[] values, Randomisation drawn) {
    int[] places =
        table.plots().stream().mapToInt(plot -> drawn.plots().indexOf(plot.code())).toArray();
    if (drawn.allowed().isEmpty() || IntStream.of(places).anyMatch(place -> place < 0)) {
      return null;
    }
    List<String> own = table.plots().stream().map(Plot::arm).toList();
    double observed = Math.abs(difference(contrast, own, values));
    long extreme = 0;
    for (List<String> arms : onPlots(places, drawn.allowed())) {
      double found = Math.abs(difference(contrast, arms, values));
      extreme += found >= observed * (1 - SAME) ? 1 : 0;
    }
    int layouts = drawn.allowed().size();
    return new RandomisationTest(
        (double) extreme / layouts,
        layouts,
        smallestP(contrast, own, onPlots(places, drawn.allowed()), values),
        true,
        false);
  }

  /** The layouts as they would have fallen on the plots of the table. */
  private static List<List<String>> onPlots(int[] places, List<List<String>> allowed) {
    return allowed.stream()
        .map(layout -> IntStream.of(places).mapToObj(layout::get).toList())
        .toList();
  }

  /** Of the plots that were read. */
  private static double smallestP(
      Contrast contrast, List<String> own, List<List<String>> layouts, double[] values) {
    int[] read = IntStream.range(0, values.length).filter(i -> !Double.isNaN(values[i])).toArray();
    return ListedLayouts.smallestP(
        contrast, onPlots(read, List.of(own)).get(0), onPlots(read, layouts));
  }

  private static double difference(Contrast contrast, List<String> arms, double[] values) {
    return mean(contrast.first(), arms, values) - mean(contrast.second(), arms, values);
  }

  private static double mean(String arm, List<String> arms, double[] values) {
    return IntStream.range(0, values.length)
        .filter(i -> arms.get(i).equals(arm) && !Double.isNaN(values[i]))
        .mapToDouble(i -> values[i])
        .average()
        .orElse(Double.NaN);
  }
}
