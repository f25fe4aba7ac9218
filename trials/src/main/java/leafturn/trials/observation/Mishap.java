package leafturn.trials.observation;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Something that touched some plots and not others, and what was decided about them.
 *
 * @param day the day
 * @param what what it was, in words
 * @param plots codes of the plots; empty for all
 * @param areaM2 area it touched, m2, or null when nobody measured
 * @param decision what was decided, or null while nobody has
 */
public record Mishap(
    LocalDate day,
    String what,
    List<String> plots,
    @Nullable Double areaM2,
    @Nullable Decision decision) {
  public Mishap {
    plots = List.copyOf(plots);
  }

  /**
   * A decision on the plots that were touched.
   *
   * @param leftOut whether their readings are left out from the day on
   * @param blind whether it is said to have been made without knowing treatments and results
   * @param doubt why that is not taken on somebody's word, in words; empty where nothing speaks
   *     against it
   * @param idle whether it leaves nothing out, since nothing was read there from the day on
   */
  public record Decision(boolean leftOut, boolean blind, String doubt, boolean idle) {
    /** A decision that nothing speaks against. */
    public Decision(boolean leftOut, boolean blind) {
      this(leftOut, blind, "", false);
    }
  }

  /** Whether readings of a plot on a day are left out because of it. */
  public boolean leavesOut(String plot, LocalDate date) {
    return decision != null
        && decision.leftOut
        && !date.isBefore(day)
        && (plots.isEmpty() || plots.contains(plot));
  }

  /** What is undecided, was decided with the results in sight, or lies on one treatment alone. */
  public static List<Remark> remarks(List<Mishap> mishaps, List<ObservedPlot> layout) {
    List<Remark> remarks = new ArrayList<>();
    for (Mishap mishap : mishaps) {
      String place = mishap.plots.isEmpty() ? "all plots" : String.join(", ", mishap.plots);
      String area =
          mishap.areaM2 == null
              ? "area not measured"
              : BigDecimal.valueOf(mishap.areaM2).stripTrailingZeros().toPlainString() + " m²";
      String told = "%s on %s (%s, %s)".formatted(mishap.what, mishap.day, place, area);
      if (mishap.decision == null) {
        remarks.add(
            Remark.warning(
                "%s: nobody has decided whether its plots stay in; decide before anybody looks at"
                    + " the results.",
                told));
      } else if (mishap.decision.idle) {
        remarks.add(
            Remark.note(
                "%s: left out from that day on, when nothing more was read there; it changes"
                    + " nothing.",
                told));
      } else if (!mishap.decision.blind) {
        remarks.add(
            Remark.warning(
                "%s: %s, decided with treatments or results in sight%s.",
                told, kept(mishap.decision), ways(mishap.decision)));
      } else if (!mishap.decision.doubt.isEmpty()) {
        remarks.add(
            Remark.warning(
                "%s: %s, told to be decided blind, but %s%s.",
                told, kept(mishap.decision), mishap.decision.doubt, ways(mishap.decision)));
      } else {
        remarks.add(
            Remark.note(
                "%s: %s, decided blind%s.", told, kept(mishap.decision), ways(mishap.decision)));
      }
      oneSided(mishap, told, layout, remarks);
    }
    return remarks;
  }

  private static String kept(Decision decision) {
    return decision.leftOut ? "left out" : "kept in";
  }

  private static String ways(Decision decision) {
    return decision.leftOut ? "; the findings show the result with and without" : "";
  }

  private static void oneSided(
      Mishap mishap, String told, List<ObservedPlot> layout, List<Remark> remarks) {
    Map<String, Integer> touched = new TreeMap<>();
    layout.stream()
        .filter(plot -> mishap.plots.contains(plot.code()))
        .forEach(plot -> touched.merge(plot.arm(), 1, Integer::sum));
    if (touched.size() == 1 && mishap.decision != null && !mishap.decision.leftOut) {
      remarks.add(
          Remark.warning(
              "%s: it touched only plots of one treatment and they stay in; what it did may be"
                  + " taken for the treatment.",
              told));
    }
  }
}
