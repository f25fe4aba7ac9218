package leafturn.trials.design.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leafturn.trials.design.Design;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.TrialLawn;
import leafturn.trials.design.TrialPlan;
import leafturn.trials.design.ground.BlockShape;
import leafturn.trials.design.ground.FixedCorners;
import leafturn.trials.design.ground.Frame;
import leafturn.trials.design.ground.Halves;
import leafturn.trials.design.ground.Place;
import leafturn.trials.design.ground.StripBlocks;
import leafturn.trials.design.ground.StripBlocks.Dropped;
import leafturn.trials.design.ground.StripSearch;
import leafturn.trials.design.ground.Surface;
import org.locationtech.jts.geom.Geometry;

/** Lays the plots of one lawn. */
final class LawnLayout {
  private static final int HALVES = 2;
  private static final double WORTH_TELLING_M2 = 0.1;

  private final TrialPlan plan;
  private final PlotRule rule;
  private final TrialLawn lawn;
  private final List<Unit> units;
  private final Surface surface;
  private final List<String> notes = new ArrayList<>();

  private LawnLayout(TrialPlan plan, TrialLawn lawn, List<Unit> units) {
    this.plan = plan;
    this.rule = plan.arrangement().plots();
    this.lawn = lawn;
    this.units = units;
    this.surface = Surface.of(lawn, rule);
  }

  /**
   * @param units the plots of the lawn, in order
   * @throws NoRoomException naming the lawn, when they do not fit
   */
  static LaidLawn of(TrialPlan plan, TrialLawn lawn, List<Unit> units) {
    LawnLayout layout = new LawnLayout(plan, lawn, units);
    try {
      return layout.areHalves() ? layout.halves() : layout.strips();
    } catch (NoRoomException none) {
      throw none.on(lawn.name());
    }
  }

  private boolean areHalves() {
    Design design = plan.arrangement().design();
    return design == Design.SPLIT_YARD || design == Design.LISTED && units.size() == HALVES;
  }

  private LaidLawn halves() {
    double guardM = rule.guardPasses() * lawn.mower().passM();
    Halves halves = Halves.of(surface, lawn.bearingDeg(), guardM);
    double bearing = halves.frame().bearingDeg();
    List<Place> places = List.of(halves.first(), halves.second());
    List<String> sides = List.of(Compass.side(bearing - 90), Compass.side(bearing + 90));
    List<LaidPlot> plots = new ArrayList<>();
    for (int half = 0; half < HALVES; half++) {
      Place place = places.get(half);
      if (place.measured().isEmpty()) {
        throw new NoRoomException(
            ("nothing of the %s half is left to measure %s m from edges, %s m from beds and behind"
                    + " a guard strip of %.2f m; keep less, or take a larger lawn.")
                .formatted(sides.get(half), rule.edgeM(), rule.bedM(), guardM));
      }
      plots.add(plot(half, place, sides.get(half) + " half"));
    }
    notes.add(
        String.format(
            Locale.ROOT,
            "The line between the halves runs towards %s; their areas are equal%s.",
            Compass.words(bearing),
            guardM == 0
                ? ""
                : String.format(
                    Locale.ROOT,
                    ", and a guard strip of %.2f m between them belongs to neither",
                    guardM)));
    plots.forEach(this::tellPieces);
    return laid(halves.frame(), plots, List.of());
  }

  private LaidLawn strips() {
    BlockShape shape = shape();
    int blocks = units.size() / (shape.columns() * shape.rows());
    StripBlocks strips =
        StripSearch.find(surface, shape, rule, lawn.mower().passM(), lawn.bearingDeg(), blocks);
    List<Place> places = strips.blocks().stream().flatMap(List::stream).toList();
    List<LaidPlot> plots = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      Unit unit = units.get(i);
      String where =
          shape.rows() == 1
              ? "strip %d".formatted(unit.column())
              : "row %d, strip %d".formatted(unit.row(), unit.column());
      plots.add(plot(i, places.get(i), where));
    }
    notes.add(
        String.format(
            Locale.ROOT,
            "Passes run towards %s; a plot is %.2f m wide (%d passes, of which %d on each side are"
                + " guard) and up to %.1f m long. Strips are counted from the left.",
            Compass.words(strips.frame().bearingDeg()),
            strips.stripM(),
            rule.passes(),
            rule.guardPasses(),
            strips.plotM()));
    plots.forEach(this::tellLost);
    if (!strips.dropped().isEmpty()) {
      notes.add(
          strips.dropped().size() == 1
              ? "One plot between the others cannot be used and is dropped; the map marks it with X1."
              : "%1$d plots between the others cannot be used and are dropped; the map marks them with X1 to X%1$d."
                  .formatted(strips.dropped().size()));
    }
    if (strips.unused() > 0) {
      notes.add(
          "Beside the blocks the lawn has %d more place%s that %s too small for a plot; every block asked for has its own."
              .formatted(
                  strips.unused(),
                  strips.unused() == 1 ? "" : "s",
                  strips.unused() == 1 ? "is" : "are"));
    }
    return laid(strips.frame(), plots, strips.dropped());
  }

  /** A pass cannot go on beyond a bed, and one place is sampled and rated: the larger part is. */
  private void tellLost(LaidPlot plot) {
    double lostM2 = plot.place().lostM2();
    if (lostM2 >= WORTH_TELLING_M2) {
      notes.add(
          String.format(
              Locale.ROOT,
              "Plot %s is cut by a bed or by the edge: its larger part is the plot; %.1f m² beyond, to"
                  + " the %s, belongs to no plot and is neither rated nor sampled.",
              plot.code(),
              lostM2,
              Compass.from(
                  plot.place().plot().getCentroid().getCoordinate(),
                  plot.place().lost().getCentroid().getCoordinate())));
    }
  }

  /** The parts of a half are all mown and sampled as one: that they are several is for the eye. */
  private void tellPieces(LaidPlot plot) {
    Geometry all = plot.place().plot();
    List<String> pieces = new ArrayList<>();
    for (int piece = 0; piece < all.getNumGeometries(); piece++) {
      double areaM2 = all.getGeometryN(piece).getArea();
      if (areaM2 >= WORTH_TELLING_M2) {
        pieces.add(String.format(Locale.ROOT, "%.1f m²", areaM2));
      }
    }
    if (pieces.size() > 1) {
      notes.add(
          "The %s (plot %s) lies in %d parts of %s; all of them are mown alike and belong to it."
              .formatted(plot.where(), plot.code(), pieces.size(), String.join(" and ", pieces)));
    }
  }

  private BlockShape shape() {
    int arms = plan.treatments().arms().size();
    double guardM = rule.guardPasses() * lawn.mower().passM();
    return switch (plan.arrangement().design()) {
      case LATIN_SQUARE -> new BlockShape(arms, arms, BlockShape.TURNING_M, 0);
      case SPLIT_PLOT, STRIP_PLOT ->
          new BlockShape(arms, plan.treatments().secondArms().size(), 0, guardM);
      case LISTED -> new BlockShape(inBlock(), 1, 0, 0);
      default -> new BlockShape(arms, 1, 0, 0);
    };
  }

  private int inBlock() {
    int first = units.get(0).block();
    return (int) units.stream().filter(unit -> unit.block() == first).count();
  }

  private LaidPlot plot(int index, Place place, String where) {
    Unit unit = units.get(index);
    int inBlock = 1;
    for (int before = 0; before < index; before++) {
      inBlock += units.get(before).block() == unit.block() ? 1 : 0;
    }
    return new LaidPlot("B%d-%d".formatted(unit.block(), inBlock), unit, place, where);
  }

  private LaidLawn laid(Frame frame, List<LaidPlot> plots, List<Dropped> dropped) {
    Pegs pegs = Pegs.of(surface.turf(), plots);
    FixedCorners fixed = FixedCorners.of(surface.turf(), pegs.places());
    notes.addAll(FixedArms.notes(plan, units));
    notes.addAll(MeasuredWords.of(plots));
    notes.addAll(MowingWords.of(plan, lawn, frame, plots));
    return new LaidLawn(
        lawn,
        surface,
        frame,
        fixed,
        plots,
        pegs.from(fixed),
        DroppedPlot.of(dropped, plots, fixed),
        notes);
  }
}
