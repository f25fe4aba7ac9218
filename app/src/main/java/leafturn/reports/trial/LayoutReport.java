package leafturn.reports.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Units;
import leafturn.records.shape.Corner;
import leafturn.records.shape.Patch;
import leafturn.records.trial.LayoutDoubts;
import leafturn.records.trial.LayoutText;
import leafturn.records.trial.TrialPlanText;
import leafturn.reports.TapeWords;
import leafturn.reports.TextTable;
import leafturn.trials.design.ground.Place;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.Peg;
import leafturn.trials.design.layout.TrialLayout;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * A layout as {@code leafturn trial lay} tells it. Places are [x, y] in m on the lawn's grid, areas
 * in m².
 *
 * @param name of the trial
 * @param design its word
 * @param seed every random choice comes from it
 * @param planSha256 digest of the plan's canonical document
 * @param layoutSha256 digest of which plot lies where and has which treatment
 * @param lawns with their bearing, fixed corners and notes
 * @param plots all plots; those that were dropped have no code and no treatment
 * @param corners to be found on the ground
 * @param cores where they are taken
 * @param bags and their codes for the laboratory
 * @param walkingOrder of each date
 */
public record LayoutReport(
    String name,
    String design,
    long seed,
    String planSha256,
    String layoutSha256,
    List<String> doubts,
    List<Lawn> lawns,
    List<Plot> plots,
    List<PlotCorner> corners,
    List<CorePlace> cores,
    List<SampleBag> bags,
    List<Walk> walkingOrder) {
  private static final double MM_PER_M = 1000;
  private static final TapeWords TAPES = new TapeWords(Units.METRIC);

  /** A lawn: {@code bearingDeg} is the direction of passes, clockwise from north. */
  public record Lawn(
      String lawn,
      double bearingDeg,
      double turfM2,
      double measurableM2,
      Corner fixedA,
      Corner fixedB,
      List<String> notes) {}

  /** A plot; {@code measured} is the part that is observed and sampled. */
  public record Plot(
      @Nullable String plot,
      String lawn,
      @Nullable Integer block,
      @Nullable Integer row,
      @Nullable Integer column,
      @Nullable String arm,
      @Nullable String secondArm,
      @Nullable String where,
      List<Patch> polygon,
      double areaM2,
      List<Patch> measured,
      double measuredM2,
      boolean usable,
      @Nullable String why) {}

  /** A corner and its distances from the two fixed corners of its lawn. */
  public record PlotCorner(
      String lawn,
      int corner,
      List<String> plots,
      Corner place,
      double fromAM,
      double fromBM,
      String side) {}

  /** Where a core is taken. */
  public record CorePlace(String plot, LocalDate date, int core, int bag, double xM, double yM) {}

  /**
   * A bag and its code; {@code duplicateOf} is the code of the bag a blind duplicate is half of.
   */
  public record SampleBag(
      String code,
      String holds,
      String plot,
      LocalDate date,
      int bag,
      @Nullable String duplicateOf) {}

  /** The plots of a block in the order in which they are rated and sampled. */
  public record Walk(LocalDate date, String lawn, int block, List<String> plots) {}

  /** The report of a layout. */
  public static LayoutReport of(TrialLayout layout) {
    List<Plot> plots = new ArrayList<>();
    List<PlotCorner> corners = new ArrayList<>();
    for (LaidLawn lawn : layout.lawns()) {
      lawn.plots().forEach(plot -> plots.add(plot(lawn, plot)));
      lawn.dropped().forEach(dropped -> plots.add(dropped(lawn, dropped)));
      lawn.pegs().forEach(peg -> corners.add(corner(lawn, peg)));
    }
    return new LayoutReport(
        layout.plan().name(),
        layout.plan().arrangement().design().word(),
        layout.plan().seed(),
        TrialPlanText.sha256(layout.plan()),
        LayoutText.sha256(layout),
        LayoutDoubts.of(layout),
        layout.lawns().stream().map(LayoutReport::lawn).toList(),
        plots,
        corners,
        layout.cores().stream()
            .map(
                core ->
                    new CorePlace(
                        core.plot(), core.date(), core.number(), core.bag(), core.xM(), core.yM()))
            .toList(),
        layout.bags().stream()
            .map(
                bag ->
                    new SampleBag(
                        bag.code(),
                        bag.holds().word(),
                        bag.plot(),
                        bag.date(),
                        bag.number(),
                        bag.duplicateOf()))
            .toList(),
        layout.walk().stream()
            .map(
                stop ->
                    new Walk(
                        stop.date(),
                        layout.lawns().get(stop.lawn()).lawn().name(),
                        stop.block(),
                        stop.plots()))
            .toList());
  }

  private static Lawn lawn(LaidLawn lawn) {
    return new Lawn(
        lawn.lawn().name(),
        lawn.frame().bearingDeg(),
        rounded(lawn.surface().turf().getArea()),
        rounded(lawn.surface().measurable().getArea()),
        at(lawn.fixed().a()),
        at(lawn.fixed().b()),
        lawn.notes());
  }

  private static Plot plot(LaidLawn lawn, LaidPlot plot) {
    return new Plot(
        plot.code(),
        lawn.lawn().name(),
        plot.unit().block(),
        plot.unit().row(),
        plot.unit().column(),
        plot.unit().arm(),
        plot.unit().secondArm(),
        plot.where(),
        Patch.allOf(plot.place().plot()),
        rounded(plot.place().plot().getArea()),
        Patch.allOf(plot.place().measured()),
        rounded(plot.place().measured().getArea()),
        true,
        null);
  }

  private static Plot dropped(LaidLawn lawn, DroppedPlot dropped) {
    Place place = dropped.place();
    return new Plot(
        null,
        lawn.lawn().name(),
        null,
        null,
        null,
        null,
        null,
        TAPES.dropped(dropped),
        Patch.allOf(place.plot()),
        rounded(place.plot().getArea()),
        Patch.allOf(place.measured()),
        rounded(place.measured().getArea()),
        false,
        dropped.why());
  }

  private static PlotCorner corner(LaidLawn lawn, Peg peg) {
    return new PlotCorner(
        lawn.lawn().name(),
        peg.number(),
        peg.plots(),
        new Corner(peg.at().xM(), peg.at().yM()),
        peg.at().fromAM(),
        peg.at().fromBM(),
        peg.at().side());
  }

  private static Corner at(Coordinate place) {
    return new Corner(place.x, place.y);
  }

  private static double rounded(double value) {
    return Math.rint(value * MM_PER_M) / MM_PER_M;
  }

  /** The report for a terminal. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("%s: %s, seed %d".formatted(name, design, seed));
    lines.add("Plan " + planSha256);
    lines.addAll(doubts);
    for (Lawn lawn : lawns) {
      lines.add("");
      lines.add(lawn.lawn());
      lawn.notes().forEach(lines::add);
      lines.addAll(plotsOf(lawn));
      lines.addAll(droppedOn(lawn));
      lines.add(
          String.format(
              Locale.ROOT,
              "Corners from A (x %.2f, y %.2f) and B (x %.2f, y %.2f):",
              lawn.fixedA().xM(),
              lawn.fixedA().yM(),
              lawn.fixedB().xM(),
              lawn.fixedB().yM()));
      lines.addAll(cornersOf(lawn));
    }
    lines.add("");
    lines.add(
        "%s and %s with codes, %d of them blind duplicates; --json tells them."
            .formatted(
                DisplayNumber.counted(cores.size(), "core"),
                DisplayNumber.counted(bags.size(), "bag"),
                bags.stream().filter(bag -> bag.duplicateOf() != null).count()));
    return lines;
  }

  private List<String> plotsOf(Lawn lawn) {
    TextTable table = new TextTable("plot", "treatment", "where", "m2", "measured m2");
    for (Plot plot : plots) {
      if (plot.usable() && plot.lawn().equals(lawn.lawn())) {
        table.row(
            String.valueOf(plot.plot()),
            plot.secondArm() == null
                ? String.valueOf(plot.arm())
                : plot.arm() + ", " + plot.secondArm(),
            String.valueOf(plot.where()),
            String.format(Locale.ROOT, "%.1f", plot.areaM2()),
            String.format(Locale.ROOT, "%.1f", plot.measuredM2()));
      }
    }
    return table.lines();
  }

  private List<String> droppedOn(Lawn lawn) {
    return plots.stream()
        .filter(plot -> !plot.usable() && plot.lawn().equals(lawn.lawn()))
        .map(plot -> "Dropped: %s: %s.".formatted(plot.where(), plot.why()))
        .toList();
  }

  private List<String> cornersOf(Lawn lawn) {
    TextTable table = new TextTable("corner", "of", "from A m", "from B m", "side from A to B");
    for (PlotCorner corner : corners) {
      if (corner.lawn().equals(lawn.lawn())) {
        table.row(
            Integer.toString(corner.corner()),
            String.join(" ", corner.plots()),
            TAPES.distance(corner.fromAM()),
            TAPES.distance(corner.fromBM()),
            corner.side());
      }
    }
    return table.lines();
  }
}
