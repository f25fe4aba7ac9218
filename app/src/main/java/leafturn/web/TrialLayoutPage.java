package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.trial.TrialPlanText;
import leafturn.reports.DayWords;
import leafturn.reports.figure.OutlineFormat;
import leafturn.reports.figure.TrialMap;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.Peg;
import leafturn.trials.design.layout.Stop;
import leafturn.trials.design.layout.TrialLayout;

/**
 * The layout of a trial: a map of each lawn with its plots and corners, and the order of the walk.
 *
 * @param id of the trial
 * @param name what its people call it
 * @param drawn how it was drawn, in a sentence
 * @param hash SHA-256 of the plan it was drawn from
 * @param why why there is no layout, or empty
 * @param lawns with their maps
 * @param walk of each date
 * @param cores what is sampled, in a sentence; empty for nothing
 * @param onEarth whether all lawns have a place on the earth
 * @param mayDraw whether the reader may draw it anew
 * @param distance unit of distances
 * @param area unit of areas
 */
public record TrialLayoutPage(
    String id,
    String name,
    String drawn,
    String hash,
    String why,
    List<Lawn> lawns,
    List<Walk> walk,
    String cores,
    boolean onEarth,
    boolean mayDraw,
    String distance,
    String area) {
  /**
   * A lawn.
   *
   * @param name its name
   * @param wide its map on a wide page, SVG
   * @param narrow its map on a phone, SVG
   * @param notes what to know
   * @param plots of it
   * @param corners to be found on the ground
   */
  public record Lawn(
      String name,
      String wide,
      String narrow,
      List<String> notes,
      List<Plot> plots,
      List<Corner> corners) {}

  /** A plot in words. */
  public record Plot(String code, String treatment, String where, String area, String measured) {}

  /** A corner in words. */
  public record Corner(String number, String plots, String fromA, String fromB, String side) {}

  /** The walk of a date: blocks with their plots in order. */
  public record Walk(String day, List<String> stops) {}

  /** A page that says why there is no layout. */
  static TrialLayoutPage without(String id, String name, String why) {
    return new TrialLayoutPage(
        id, name, "", "", why, List.of(), List.of(), "", false, false, "", "");
  }

  /** The page of a layout. */
  static TrialLayoutPage of(String id, TrialLayout layout, boolean mayDraw, Units units) {
    return new TrialLayoutPage(
        id,
        layout.plan().name(),
        "Design %s, drawn from the seed %d; the same plan and seed give this layout again."
            .formatted(
                layout.plan().arrangement().design().word().replace('-', ' '),
                layout.plan().seed()),
        TrialPlanText.sha256(layout.plan()),
        "",
        layout.lawns().stream().map(lawn -> lawn(layout, lawn, units)).toList(),
        walks(layout),
        cores(layout),
        layout.lawns().stream().allMatch(lawn -> lawn.lawn().origin() != null),
        mayDraw,
        Measure.DISTANCE.unit(units).symbol(),
        Measure.AREA.unit(units).symbol());
  }

  private static Lawn lawn(TrialLayout layout, LaidLawn lawn, Units units) {
    TrialMap.Look look = new TrialMap.Look(layout.plan().treatments().names(), List.of(), units);
    List<String> notes = new ArrayList<>(lawn.notes());
    lawn.dropped().forEach(dropped -> notes.add("Dropped: " + dropped.why() + "."));
    return new Lawn(
        lawn.lawn().name(),
        TrialMap.draw(lawn, OutlineFormat.WIDE, look),
        TrialMap.draw(lawn, OutlineFormat.NARROW, look),
        notes,
        lawn.plots().stream().map(plot -> plot(plot, units)).toList(),
        lawn.pegs().stream().map(peg -> corner(peg, units)).toList());
  }

  private static Plot plot(LaidPlot plot, Units units) {
    return new Plot(
        plot.code(),
        plot.unit().treatment(),
        plot.where(),
        area(plot.place().plot().getArea(), units),
        area(plot.place().measured().getArea(), units));
  }

  private static String area(double areaM2, Units units) {
    return String.format(Locale.ROOT, "%.1f", Measure.AREA.shown(areaM2, units));
  }

  private static Corner corner(Peg peg, Units units) {
    return new Corner(
        Integer.toString(peg.number()),
        String.join(", ", peg.plots()),
        distance(peg.fromAM(), units),
        distance(peg.fromBM(), units),
        peg.left() ? "left" : "right");
  }

  private static String distance(double distanceM, Units units) {
    return String.format(Locale.ROOT, "%.2f", Measure.DISTANCE.shown(distanceM, units));
  }

  private static List<Walk> walks(TrialLayout layout) {
    return layout.plan().observing().dates().stream()
        .map(
            date ->
                new Walk(
                    DayWords.dayAndYear(date),
                    layout.walk().stream()
                        .filter(stop -> stop.date().equals(date))
                        .map(stop -> words(layout, stop))
                        .toList()))
        .toList();
  }

  private static String words(TrialLayout layout, Stop stop) {
    return "%s: %s"
        .formatted(
            layout.lawns().get(stop.lawn()).lawn().name(), String.join(", then ", stop.plots()));
  }

  private static String cores(TrialLayout layout) {
    if (layout.bags().isEmpty()) {
      return "";
    }
    int divided = layout.dividedBags().size();
    return "%d cores on %d dates go into %d bags%s; the laboratory sees their codes alone."
        .formatted(
            layout.cores().size(),
            layout.plan().observing().cores().dates().size(),
            layout.bags().size() - divided,
            divided == 0
                ? ""
                : ", of which %d are divided in two as blind duplicates".formatted(divided));
  }
}
