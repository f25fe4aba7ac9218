package leafturn.trials.findings;

import java.util.List;
import java.util.stream.IntStream;
import leafturn.trials.analysis.paired.SignFlipTest;
import leafturn.trials.design.Contrast;
import leafturn.trials.findings.TrialFacts.Randomisation;
import leafturn.trials.findings.TrialFacts.Sides;
import org.jspecify.annotations.Nullable;

/**
 * The exact test by the layouts that might have been drawn: if the treatment does nothing, each of
 * them would have shown the same values under other names.
 *
 * @param p share of the layouts with a difference at least as large
 * @param layouts how many might have been drawn
 * @param smallestP that the layouts can give at all
 * @param listed whether they come from a stored list
 * @source fisher1935, section 21
 */
public record RandomisationTest(double p, long layouts, double smallestP, boolean listed) {
  /** Sums this close count as equal: they differ by rounding alone. */
  private static final double SAME = 1e-9;

  /**
   * The test of a split season; null where there are too many units to list the layouts, or where
   * the list does not know the plots.
   *
   * @param pairs units with both arms
   */
  static @Nullable RandomisationTest of(
      PairedSeason pairs, SeasonTable table, Randomisation drawn) {
    if (drawn.sides() == Sides.LISTED) {
      return drawn.allowed().isEmpty() ? null : listed(pairs, drawn);
    }
    if (drawn.sides() == Sides.OTHER || pairs.units().size() > SignFlipTest.MOST_YARDS) {
      return null;
    }
    if (drawn.sides() == Sides.FREE || drawn.plots().isEmpty()) {
      int units = pairs.units().size();
      double p = SignFlipTest.p(pairs.differences());
      return new RandomisationTest(p, 1L << units, SignFlipTest.smallestP(units), false);
    }
    return balanced(pairs, table, drawn);
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
        (double) extreme / layouts, layouts, Math.min(1, 2.0 / layouts), false);
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

  /**
   * A list of layouts: each gives every unit's two plots their arms, and so every difference its
   * sign. Units that are left out count in no layout.
   */
  private static @Nullable RandomisationTest listed(PairedSeason pairs, Randomisation drawn) {
    double[] differences = pairs.differences();
    int[] places =
        pairs.firstPlots().stream().mapToInt(plot -> drawn.plots().indexOf(plot)).toArray();
    if (IntStream.of(places).anyMatch(place -> place < 0)) {
      return null;
    }
    double bound = bound(differences);
    long extreme = 0;
    for (List<String> layout : drawn.allowed()) {
      double sum = 0;
      for (int i = 0; i < places.length; i++) {
        boolean same = layout.get(places[i]).equals(pairs.contrast().first());
        sum += same ? differences[i] : -differences[i];
      }
      extreme += Math.abs(sum) >= bound ? 1 : 0;
    }
    int layouts = drawn.allowed().size();
    return new RandomisationTest(
        (double) extreme / layouts, layouts, smallest(drawn.allowed()), true);
  }

  /** One layout, or it and its mirror image where the list holds both. */
  private static double smallest(List<List<String>> allowed) {
    List<String> one = allowed.get(0);
    boolean mirrored =
        allowed.stream()
            .anyMatch(
                other ->
                    IntStream.range(0, one.size()).noneMatch(i -> other.get(i).equals(one.get(i))));
    return Math.min(1, (mirrored ? 2.0 : 1.0) / allowed.size());
  }

  /** The test of plots without units: the difference of the arms' means over the listed layouts. */
  static @Nullable RandomisationTest ofPlots(
      Contrast contrast, SeasonTable table, double[] values, Randomisation drawn) {
    int[] places =
        table.plots().stream().mapToInt(plot -> drawn.plots().indexOf(plot.code())).toArray();
    if (drawn.allowed().isEmpty() || IntStream.of(places).anyMatch(place -> place < 0)) {
      return null;
    }
    List<String> own = table.plots().stream().map(Plot::arm).toList();
    double observed = Math.abs(difference(contrast, own, values));
    long extreme = 0;
    for (List<String> layout : drawn.allowed()) {
      List<String> arms = IntStream.of(places).mapToObj(layout::get).toList();
      double found = Math.abs(difference(contrast, arms, values));
      extreme += found >= observed * (1 - SAME) ? 1 : 0;
    }
    int layouts = drawn.allowed().size();
    return new RandomisationTest(
        (double) extreme / layouts, layouts, smallest(drawn.allowed()), true);
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
