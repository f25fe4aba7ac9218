package leafturn.trials.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import leafturn.trials.analysis.data.TrialFaultException;
import leafturn.trials.design.Outcome;

/**
 * The readings of one outcome as one value for each plot and date, on the scale of the analysis:
 * subsamples, duplicates and raters are averaged, nothing is filled in.
 *
 * @param plots in the order they were given
 * @param dates as the readings write them, in order of time
 * @param days of the dates
 * @param values {@code [plot][date]}; NaN where nothing was read
 * @param readings how many values went in
 * @param belowDetection how many of them lie below their detection limit
 * @param withinVariance variance of values of one plot and date; NaN where each has one value
 */
public record SeasonTable(
    List<Plot> plots,
    List<String> dates,
    double[] days,
    double[][] values,
    int readings,
    int belowDetection,
    double withinVariance) {

  /**
   * @param standIn share of the detection limit at which values below it stand
   */
  static SeasonTable of(
      Outcome outcome, List<Plot> plots, List<PlotReading> readings, double standIn) {
    List<String> dates = datesOf(readings);
    Map<String, Integer> plotAt = new LinkedHashMap<>();
    plots.forEach(plot -> plotAt.put(plot.code(), plotAt.size()));
    List<List<List<Double>>> cells = new ArrayList<>();
    for (int plot = 0; plot < plots.size(); plot++) {
      cells.add(dates.stream().<List<Double>>map(date -> new ArrayList<>()).toList());
    }
    double[] days = new double[dates.size()];
    int below = 0;
    for (PlotReading reading : readings) {
      Integer plot = plotAt.get(reading.plot());
      if (plot == null) {
        throw new TrialFaultException(
            "A reading of %s on %s is of the plot '%s', which the layout does not have."
                .formatted(outcome.name(), reading.date(), reading.plot()));
      }
      int date = dates.indexOf(reading.date());
      days[date] = reading.day();
      below += reading.belowDetection() ? 1 : 0;
      cells.get(plot).get(date).add(onScale(outcome, reading, standIn));
    }
    return new SeasonTable(
        List.copyOf(plots), dates, days, means(cells), readings.size(), below, within(cells));
  }

  private static List<String> datesOf(List<PlotReading> readings) {
    TreeMap<Double, String> byDay = new TreeMap<>();
    for (PlotReading reading : readings) {
      String other = byDay.putIfAbsent(reading.day(), reading.date());
      if (other != null && !other.equals(reading.date())) {
        throw new TrialFaultException(
            "'%s' and '%s' are the same date written in two ways; write it in one."
                .formatted(other, reading.date()));
      }
    }
    return List.copyOf(byDay.values());
  }

  private static double onScale(Outcome outcome, PlotReading reading, double standIn) {
    double value = reading.withLimitsAt(standIn);
    if (outcome.scale() == Outcome.Scale.IDENTITY) {
      return value;
    }
    if (!(value > 0)) {
      throw new TrialFaultException(
          "%s of plot %s on %s is %s, which has no logarithm; use the identity scale, or say that it is below the detection limit, as in <0.5."
              .formatted(outcome.name(), reading.plot(), reading.date(), value));
    }
    return Math.log(value);
  }

  private static double[][] means(List<List<List<Double>>> cells) {
    return cells.stream()
        .map(row -> row.stream().mapToDouble(SeasonTable::mean).toArray())
        .toArray(double[][]::new);
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
  }

  private static double within(List<List<List<Double>>> cells) {
    double squares = 0;
    int freedom = 0;
    for (List<List<Double>> row : cells) {
      for (List<Double> cell : row) {
        double mean = mean(cell);
        squares += cell.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum();
        freedom += Math.max(0, cell.size() - 1);
      }
    }
    return freedom == 0 ? Double.NaN : squares / freedom;
  }

  /** The units, in the order they were given. */
  public List<String> units() {
    return List.copyOf(new LinkedHashSet<>(plots.stream().map(Plot::unit).toList()));
  }

  /** The plots of a unit, as places in {@code plots}. */
  public List<Integer> plotsOf(String unit) {
    List<Integer> own = new ArrayList<>();
    for (int plot = 0; plot < plots.size(); plot++) {
      if (plots.get(plot).unit().equals(unit)) {
        own.add(plot);
      }
    }
    return own;
  }

  /** Whether every plot has a value on every date. */
  public boolean isComplete() {
    return Arrays.stream(values).allMatch(row -> Arrays.stream(row).noneMatch(Double::isNaN));
  }

  /** The same on some of its dates. */
  SeasonTable onDates(List<Integer> chosen) {
    double[][] kept =
        Arrays.stream(values)
            .map(row -> chosen.stream().mapToDouble(date -> row[date]).toArray())
            .toArray(double[][]::new);
    return new SeasonTable(
        plots,
        chosen.stream().map(dates::get).toList(),
        chosen.stream().mapToDouble(date -> days[date]).toArray(),
        kept,
        readings,
        belowDetection,
        withinVariance);
  }

  /** Mean of each plot over all its dates; NaN where it has none. */
  double[] plotMeans() {
    return Arrays.stream(values)
        .mapToDouble(
            row ->
                Arrays.stream(row)
                    .filter(value -> !Double.isNaN(value))
                    .average()
                    .orElse(Double.NaN))
        .toArray();
  }

  /** The plot of a unit that bears an arm; -1 where none does. */
  int plotWith(String unit, String arm) {
    for (int plot : plotsOf(unit)) {
      if (Objects.equals(plots.get(plot).arm(), arm)) {
        return plot;
      }
    }
    return -1;
  }
}
