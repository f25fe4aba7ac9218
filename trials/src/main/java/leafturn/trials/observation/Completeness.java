package leafturn.trials.observation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Which plots were read when, and what follows from gaps and from plots of unequal size. */
public final class Completeness {
  private static final int SHOWN = 6;
  private static final double UNEQUAL = 0.02;
  private static final List<String> AMOUNTS = List.of("g", "kg", "lb", "oz", "l", "bags");

  private Completeness() {}

  /**
   * Plots that are missing on days on which others were read.
   *
   * @param readings of one outcome, at least one
   */
  public static List<Remark> missing(List<ObservedPlot> plots, List<Reading> readings) {
    Set<String> read = new HashSet<>();
    Set<LocalDate> dates = new java.util.TreeSet<>();
    readings.forEach(
        reading -> {
          read.add(reading.plot() + "\n" + reading.date());
          dates.add(reading.date());
        });
    List<String> gaps = new ArrayList<>();
    for (LocalDate date : dates) {
      for (ObservedPlot plot : plots) {
        if (!read.contains(plot.code() + "\n" + date)) {
          gaps.add("%s on %s".formatted(plot.code(), date));
        }
      }
    }
    if (gaps.isEmpty()) {
      return List.of();
    }
    String shown = String.join(", ", gaps.subList(0, Math.min(SHOWN, gaps.size())));
    return List.of(
        Remark.note(
            "%s: %d of %d plots and dates were not read (%s%s); they stay empty and the model uses what"
                + " is there. Means are never filled in.",
            readings.get(0).outcome().replace('_', ' '),
            gaps.size(),
            plots.size() * dates.size(),
            shown,
            gaps.size() > SHOWN ? " and others" : ""));
  }

  /**
   * Amounts from plots of unequal size must be stated for an area.
   *
   * @param unit of the outcome
   */
  public static List<Remark> areas(List<ObservedPlot> plots, String unit) {
    double[] areas =
        plots.stream().mapToDouble(ObservedPlot::areaM2).filter(Double::isFinite).toArray();
    if (areas.length < 2 || !AMOUNTS.contains(unit.strip().toLowerCase(Locale.ROOT))) {
      return List.of();
    }
    double least = java.util.Arrays.stream(areas).min().orElseThrow();
    double most = java.util.Arrays.stream(areas).max().orElseThrow();
    return most <= least * (1 + UNEQUAL)
        ? List.of()
        : List.of(
            Remark.refused(
                "Plots have %.0f to %.0f m²; an amount in %s compares their sizes. State it for an"
                    + " area, as g/m2.",
                least, most, unit));
  }
}
