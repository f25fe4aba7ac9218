package leafturn.trials.observation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import leafturn.trials.design.Protocol;
import org.jspecify.annotations.Nullable;

/**
 * A mowing of a trial as it was done; what nobody noted is null.
 *
 * @param day the day
 * @param plots codes of the plots that were mown; empty for all
 * @param sameDay whether all plots of a lawn were mown that day
 * @param collectedFirst whether collected plots were mown first
 * @param deckCleaned whether deck and bag were emptied between plots
 * @param returnedHeightMm cut height where clippings are returned, mm
 * @param collectedHeightMm cut height where they are collected, mm
 */
public record MowingRecord(
    LocalDate day,
    List<String> plots,
    @Nullable Boolean sameDay,
    @Nullable Boolean collectedFirst,
    @Nullable Boolean deckCleaned,
    @Nullable Double returnedHeightMm,
    @Nullable Double collectedHeightMm) {
  /** Closer than decks are set (common practice, no source). */
  private static final double SAME_HEIGHT_MM = 2;

  public MowingRecord {
    plots = List.copyOf(plots);
  }

  /** Days on which a part of a unit was mown and the rest was not, a sentence for each. */
  public static List<Remark> onOnePartOnly(List<MowingRecord> mowings, List<ObservedPlot> layout) {
    Map<LocalDate, Set<String>> mown = new TreeMap<>();
    for (MowingRecord mowing : mowings) {
      Set<String> plots = mown.computeIfAbsent(mowing.day, day -> new TreeSet<>());
      if (mowing.plots.isEmpty()) {
        layout.forEach(plot -> plots.add(plot.code()));
      }
      plots.addAll(mowing.plots);
    }
    List<Remark> remarks = new ArrayList<>();
    mown.forEach(
        (day, plots) -> {
          String halves = halves(layout, plots);
          if (!halves.isEmpty()) {
            remarks.add(
                Remark.warning(
                    "On %s a part of a unit was mown and the rest was not (%s): what is mown on"
                        + " other days or more often differs by that, and the treatment cannot be"
                        + " told from it.",
                    day, halves));
          }
        });
    return remarks;
  }

  private static String halves(List<ObservedPlot> layout, Set<String> mown) {
    Map<String, List<ObservedPlot>> units = new LinkedHashMap<>();
    layout.forEach(plot -> units.computeIfAbsent(plot.unit(), unit -> new ArrayList<>()).add(plot));
    List<String> told = new ArrayList<>();
    units.forEach(
        (unit, plots) -> {
          String cut = codes(plots, plot -> mown.contains(plot.code()));
          String uncut = codes(plots, plot -> !mown.contains(plot.code()));
          if (!cut.isEmpty() && !uncut.isEmpty()) {
            told.add("%s: %s mown, %s not".formatted(unit, cut, uncut));
          }
        });
    return String.join("; ", told);
  }

  private static String codes(List<ObservedPlot> plots, Predicate<ObservedPlot> which) {
    return plots.stream().filter(which).map(ObservedPlot::code).collect(Collectors.joining(", "));
  }

  /** Where the mowings departed from what the plan keeps the same. */
  public static List<Remark> remarks(Protocol protocol, List<MowingRecord> mowings) {
    List<Remark> remarks = new ArrayList<>();
    asked(
        remarks,
        protocol.bothHalvesSameDay(),
        mowings,
        MowingRecord::sameDay,
        "the plots of a lawn were mown on different days",
        "one practice is judged on longer grass");
    asked(
        remarks,
        protocol.collectedFirst(),
        mowings,
        MowingRecord::collectedFirst,
        "the collected plots were not mown first",
        "clippings may have been carried into them");
    asked(
        remarks,
        protocol.deckCleaned(),
        mowings,
        MowingRecord::deckCleaned,
        "the deck was not cleaned between plots",
        "clippings drift into the collected plots");
    for (MowingRecord mowing : mowings) {
      Double returned = mowing.returnedHeightMm;
      Double collected = mowing.collectedHeightMm;
      if (returned != null
          && collected != null
          && Math.abs(returned - collected) > SAME_HEIGHT_MM) {
        remarks.add(
            Remark.warning(
                "On %s the plots were cut at %.0f mm (returned) and %.0f mm (collected): height and"
                    + " practice cannot be told apart.",
                mowing.day, returned, collected));
      }
      Double planned = protocol.heightMm();
      if (planned != null && returned != null && Math.abs(returned - planned) > SAME_HEIGHT_MM) {
        remarks.add(
            Remark.note(
                "On %s the height was %.0f mm, not the %.0f mm of the plan.",
                mowing.day, returned, planned));
      }
    }
    return remarks;
  }

  private static void asked(
      List<Remark> remarks,
      boolean asked,
      List<MowingRecord> mowings,
      Function<MowingRecord, @Nullable Boolean> done,
      String what,
      String why) {
    List<String> days =
        mowings.stream()
            .filter(mowing -> Boolean.FALSE.equals(done.apply(mowing)))
            .map(mowing -> mowing.day.toString())
            .toList();
    if (!asked) {
      remarks.add(
          Remark.warning(
              "The plan does not ask that this is kept: %s may happen, and then %s.", what, why));
    } else if (!days.isEmpty()) {
      remarks.add(Remark.warning("On %s %s: %s.", String.join(", ", days), what, why));
    }
  }
}
