package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import leafturn.trials.analysis.BelowDetection;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.design.Outcome;

/**
 * The readings of one outcome, those before the season apart as baseline.
 *
 * @param plots of the layout
 * @param before the season
 * @param season readings of the season
 */
record SeasonReadings(
    Outcome outcome, List<Plot> plots, List<PlotReading> before, List<PlotReading> season) {
  /** Share of the detection limit at which values below it stand. */
  static final double HALF = 0.5;

  private static final double NEAR_ZERO_ON_LOG = 0.1;

  static SeasonReadings of(
      TrialFacts facts, Outcome outcome, List<Plot> plots, List<PlotReading> all) {
    List<PlotReading> before = new ArrayList<>();
    List<PlotReading> season = new ArrayList<>();
    all.forEach(reading -> (reading.day() < facts.seasonFrom() ? before : season).add(reading));
    if (season.isEmpty()) {
      throw new TrialFaultException(
          "There are no readings of %s from the season; enter some before it is analysed."
              .formatted(outcome.name()));
    }
    return new SeasonReadings(outcome, plots, before, season);
  }

  SeasonTable table(double standIn) {
    return SeasonTable.of(outcome, plots, season, standIn);
  }

  /** Mean of each plot before the season; empty where some plot has none. */
  double[] baseline() {
    if (before.isEmpty()) {
      return new double[0];
    }
    double[] means = SeasonTable.of(outcome, plots, before, HALF).plotMeans();
    for (double mean : means) {
      if (Double.isNaN(mean)) {
        return new double[0];
      }
    }
    return means;
  }

  OrdinalCheck ordinal(TrialFacts facts, Outcome of) {
    return OrdinalCheck.of(
        facts,
        plots,
        season,
        Objects.requireNonNullElse(of.low(), Double.NaN),
        Objects.requireNonNullElse(of.high(), Double.NaN));
  }

  /** Whether few enough values lie below detection for a test; else the reason is noted. */
  boolean mayBeTested(List<String> warnings) {
    long below = season.stream().filter(PlotReading::belowDetection).count();
    if (below <= BelowDetection.MOST_FOR_HALF * season.size()) {
      return true;
    }
    warnings.add(
        "%d of %d values of %s lie below their detection limit; a stand-in would decide the result, so only the shares above the limit are given: %s."
            .formatted(below, season.size(), outcome.name(), sharesAbove()));
    return false;
  }

  private String sharesAbove() {
    Map<String, String> armOf = new LinkedHashMap<>();
    plots.forEach(plot -> armOf.put(plot.code(), plot.arm()));
    Map<String, int[]> counts = new LinkedHashMap<>();
    for (PlotReading reading : season) {
      String arm = Objects.requireNonNullElse(armOf.get(reading.plot()), reading.plot());
      int[] count = counts.computeIfAbsent(arm, any -> new int[2]);
      count[0] += reading.belowDetection() ? 0 : 1;
      count[1]++;
    }
    return String.join(
        ", ",
        counts.entrySet().stream()
            .map(
                each ->
                    "%s %d of %d".formatted(each.getKey(), each.getValue()[0], each.getValue()[1]))
            .toList());
  }

  /** What the stand-in for values below detection does to each comparison. */
  List<String> sensitivity(List<Effect> half, Function<SeasonTable, List<Effect>> run) {
    long below = season.stream().filter(PlotReading::belowDetection).count();
    if (below == 0 || half.isEmpty()) {
      return List.of();
    }
    boolean log = outcome.scale() == Outcome.Scale.LOG;
    List<Effect> limit = run.apply(table(1));
    List<Effect> low = run.apply(table(log ? NEAR_ZERO_ON_LOG : 0));
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < Math.min(half.size(), Math.min(limit.size(), low.size())); i++) {
      sentences.add(
          "%d of %d values lie below their detection limit and stand at half of it: p of %s is %.3g so, %.3g at the limit, %.3g at %s."
              .formatted(
                  below,
                  season.size(),
                  half.get(i).contrast().first() + " against " + half.get(i).contrast().second(),
                  half.get(i).estimated().p(),
                  limit.get(i).estimated().p(),
                  low.get(i).estimated().p(),
                  log ? "a tenth of it" : "zero"));
    }
    return sentences;
  }
}
