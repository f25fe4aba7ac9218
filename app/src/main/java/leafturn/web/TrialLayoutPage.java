package leafturn.web;

import java.util.ArrayList;
import java.util.List;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Units;
import leafturn.records.trial.LayoutDoubts;
import leafturn.records.trial.TrialPlanText;
import leafturn.reports.DayWords;
import leafturn.reports.TapeWords;
import leafturn.reports.figure.OutlineFormat;
import leafturn.reports.figure.TrialMap;
import leafturn.trials.design.Outcome;
import leafturn.trials.design.layout.Bag;
import leafturn.trials.design.layout.DroppedPlot;
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
 * @param draws how often it was drawn, in a sentence
 * @param hash SHA-256 of the plan it was drawn from
 * @param doubts what of it stands in the way of a verdict, in sentences
 * @param why why there is no layout, or empty
 * @param lawns with their maps
 * @param walk of each date
 * @param samples what is sampled for a laboratory, in sentences; empty for nothing
 * @param onEarth whether all lawns have a place on the earth
 * @param mayDraw whether the reader may draw it anew
 * @param distance unit of distances
 * @param area unit of areas
 */
public record TrialLayoutPage(
    String id,
    String name,
    String drawn,
    String draws,
    String hash,
    List<String> doubts,
    String why,
    List<Lawn> lawns,
    List<Walk> walk,
    String samples,
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
   * @param dropped plots that cannot be used
   * @param corners to be found on the ground
   */
  public record Lawn(
      String name,
      String wide,
      String narrow,
      List<String> notes,
      List<Plot> plots,
      List<Dropped> dropped,
      List<Corner> corners) {}

  /** A plot in words. */
  public record Plot(String code, String treatment, String where, String area, String measured) {}

  /** A plot that was dropped, its middle in words. */
  public record Dropped(
      String mark, String beside, String fromA, String fromB, String side, String why) {}

  /** A corner in words. */
  public record Corner(String number, String plots, String fromA, String fromB, String side) {}

  /** The walk of a date: blocks with their plots in order. */
  public record Walk(String day, List<String> stops) {}

  /** A page that says why there is no layout. */
  static TrialLayoutPage without(String id, String name, String why) {
    return new TrialLayoutPage(
        id, name, "", "", "", List.of(), why, List.of(), List.of(), "", false, false, "", "");
  }

  /** Why there is no GeoJSON of the plots, and what gives one. */
  public String noPlace() {
    return "No GeoJSON of the plots: an outline in metres alone has no place on the earth. An outline taken from a GeoJSON file on a lawn's own page has one; save the plan again after that.";
  }

  /** The page of a layout. */
  static TrialLayoutPage of(
      String id, TrialLayout layout, String draws, boolean mayDraw, Units units) {
    TapeWords tapes = new TapeWords(units);
    return new TrialLayoutPage(
        id,
        layout.plan().name(),
        "Design %s, drawn from the seed %d; the same plan and seed give this layout again."
            .formatted(
                layout.plan().arrangement().design().word().replace('-', ' '),
                layout.plan().seed()),
        draws,
        TrialPlanText.sha256(layout.plan()),
        LayoutDoubts.of(layout),
        "",
        layout.lawns().stream().map(lawn -> lawn(layout, lawn, units)).toList(),
        walks(layout),
        samples(layout),
        layout.lawns().stream().allMatch(lawn -> lawn.lawn().origin() != null),
        mayDraw,
        tapes.distanceUnit(),
        tapes.areaUnit());
  }

  private static Lawn lawn(TrialLayout layout, LaidLawn lawn, Units units) {
    TrialMap.Look look = new TrialMap.Look(layout.plan().treatments().names(), List.of(), units);
    TapeWords tapes = new TapeWords(units);
    return new Lawn(
        lawn.lawn().name(),
        TrialMap.draw(lawn, OutlineFormat.WIDE, look),
        TrialMap.draw(lawn, OutlineFormat.NARROW, look),
        lawn.notes().stream().map(tapes::sentence).toList(),
        lawn.plots().stream().map(plot -> plot(plot, tapes)).toList(),
        lawn.dropped().stream().map(dropped -> dropped(dropped, tapes)).toList(),
        lawn.pegs().stream().map(peg -> corner(peg, tapes)).toList());
  }

  private static Plot plot(LaidPlot plot, TapeWords tapes) {
    return new Plot(
        plot.code(),
        plot.unit().treatment(),
        plot.where(),
        tapes.area(plot.place().plot().getArea()),
        tapes.area(plot.place().measured().getArea()));
  }

  private static Dropped dropped(DroppedPlot dropped, TapeWords tapes) {
    return new Dropped(
        dropped.mark(),
        dropped.beside(),
        tapes.distance(dropped.middle().fromAM()),
        tapes.distance(dropped.middle().fromBM()),
        dropped.middle().side(),
        dropped.why());
  }

  private static Corner corner(Peg peg, TapeWords tapes) {
    return new Corner(
        Integer.toString(peg.number()),
        String.join(", ", peg.plots()),
        tapes.distance(peg.at().fromAM()),
        tapes.distance(peg.at().fromBM()),
        peg.at().side());
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

  private static String samples(TrialLayout layout) {
    List<String> sentences = new ArrayList<>();
    if (!layout.cores().isEmpty()) {
      sentences.add(
          "%s on %s go into %s"
              .formatted(
                  DisplayNumber.counted(layout.cores().size(), "core"),
                  DisplayNumber.counted(layout.plan().observing().cores().dates().size(), "date"),
                  bags(layout, Outcome.Kind.SOIL)));
    }
    if (layout.plan().observing().has(Outcome.Kind.TISSUE)) {
      sentences.add(
          "leaves on %s go into %s"
              .formatted(
                  DisplayNumber.counted(layout.plan().observing().dates().size(), "date"),
                  bags(layout, Outcome.Kind.TISSUE)));
    }
    return sentences.isEmpty()
        ? ""
        : String.join("; ", sentences) + "; the laboratory sees their codes alone.";
  }

  private static String bags(TrialLayout layout, Outcome.Kind holds) {
    List<Bag> bags = layout.bags().stream().filter(bag -> bag.holds() == holds).toList();
    long divided = bags.stream().filter(bag -> bag.duplicateOf() != null).count();
    return "%s%s"
        .formatted(
            DisplayNumber.counted(bags.size() - divided, "bag"),
            divided == 0
                ? ""
                : ", of which %d %s divided in two as blind duplicates"
                    .formatted(divided, divided == 1 ? "is" : "are"));
  }
}
