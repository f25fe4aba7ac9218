package leafturn.trials.design.ground;

import java.util.List;
import java.util.Locale;
import leafturn.trials.design.NoRoomException;
import leafturn.trials.design.PlotRule;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/**
 * Looks for the direction and the place of strips that give every block room and the most to
 * measure, along a side of the lawn unless another direction gives much more (common practice, no
 * source); without a length, plots are as long as the number of blocks allows.
 */
public final class StripSearch {
  private static final double STEP_DEG = 15;
  private static final int OFFSETS = 4;
  private static final double SHORTEST_M = 1;

  /**
   * What a direction along no side must give to measure, as a multiple of one along a side: more
   * than the diagonal of a square, 1.41 times its side, since strips that end askew are hard to
   * mow.
   */
  private static final double MUCH_MORE = 1.45;

  /** An outline with more corners is searched in a simpler form. */
  private static final int MANY_CORNERS = 150;

  private static final double SIMPLER_BY_M = 0.1;

  private final Surface surface;
  private final BlockShape shape;
  private final PlotRule plots;
  private final double passM;
  private final int needed;

  /** Rows of blocks that are tried. */
  private int rows = 1;

  /** The most blocks that found room where not all did. */
  private int most;

  private StripSearch(Surface surface, BlockShape shape, PlotRule plots, double passM, int needed) {
    this.surface = surface;
    this.shape = shape;
    this.plots = plots;
    this.passM = passM;
    this.needed = needed;
  }

  /**
   * Blocks of strips on a lawn.
   *
   * @param passM width of a mower pass, m
   * @param bearingDeg direction of the passes, or null for the best
   * @param needed number of blocks
   * @throws NoRoomException when they do not all fit
   */
  public static StripBlocks find(
      Surface surface,
      BlockShape shape,
      PlotRule plots,
      double passM,
      @Nullable Double bearingDeg,
      int needed) {
    StripSearch search = new StripSearch(surface, shape, plots, passM, needed);
    if (surface.measurable().isEmpty()) {
      throw new NoRoomException(
          "nothing is left to measure %s m from edges and %s m from beds; keep less, or take a wider lawn."
              .formatted(plots.edgeM(), plots.bedM()));
    }
    List<Double> bearings =
        bearingDeg == null ? Bearings.of(surface.turf(), STEP_DEG) : List.of(bearingDeg);
    return search.find(bearings);
  }

  private StripBlocks find(List<Double> bearings) {
    List<Double> sides = Bearings.alongSides(surface.turf());
    Surface simple = simpler();
    int mostRows = plots.lengthM() == null ? needed : 1;
    StripLattice along =
        withRoom(simple, bearings.stream().filter(sides::contains).toList(), mostRows);
    StripLattice askew =
        withRoom(
            simple,
            bearings.stream().filter(bearing -> !sides.contains(bearing)).toList(),
            along == null ? mostRows : rows);
    StripLattice best = better(along, askew, MUCH_MORE);
    if (best == null) {
      throw new NoRoomException(noRoom(most));
    }
    StripBlocks blocks = best.blocks();
    return along == null || best == along || isEnough(blocks) ? blocks : along.blocks();
  }

  /** Strips that end askew are not worth it where even so some have next to nothing to measure. */
  private static boolean isEnough(StripBlocks blocks) {
    return blocks.blocks().stream()
        .flatMap(List::stream)
        .allMatch(place -> place.measured().getArea() >= PlotRule.LEAST_MEASURED_M2);
  }

  /** The best in these directions that gives every block room in the fewest rows, or null. */
  private @Nullable StripLattice withRoom(Surface simple, List<Double> bearings, int mostRows) {
    for (rows = 1; rows <= mostRows && !bearings.isEmpty(); rows++) {
      StripLattice best = best(simple, bearings, rows);
      if (best != null && simple != surface && best.found() >= needed) {
        StripLattice exact = best.on(surface);
        best = exact.found() >= needed ? exact : best(surface, bearings, rows);
      }
      if (best != null && best.found() >= needed) {
        return best;
      }
      most = best == null ? most : Math.max(most, best.found());
    }
    return null;
  }

  private String noRoom(int found) {
    Double length = plots.lengthM();
    int inBlock = shape.columns() * shape.rows();
    return String.format(
        Locale.ROOT,
        "%s %d block%s of %d plots, each %.2f m wide%s, %s; take fewer blocks or passes%s, or"
            + " another lawn.",
        found == 0 ? "there is no room for" : "there is room for %d of".formatted(found),
        needed,
        needed == 1 ? "" : "s",
        inBlock,
        plots.passes() * passM,
        length == null ? "" : String.format(Locale.ROOT, " and %.1f m long", length),
        String.format(
            Locale.ROOT, "on %.0f m² that can be measured", surface.measurable().getArea()),
        length == null ? "" : ", or shorter plots");
  }

  private Surface simpler() {
    if (surface.measurable().getNumPoints() <= MANY_CORNERS) {
      return surface;
    }
    return new Surface(
        TopologyPreservingSimplifier.simplify(surface.turf(), SIMPLER_BY_M),
        TopologyPreservingSimplifier.simplify(surface.measurable(), SIMPLER_BY_M),
        surface.fromEdge());
  }

  /** The best over some directions and all places, or null when plots would be too short. */
  private @Nullable StripLattice best(Surface on, List<Double> bearings, int blockRows) {
    StripLattice best = null;
    for (double bearing : bearings) {
      best = better(best, best(on, bearing, blockRows), 1);
    }
    return best;
  }

  private static @Nullable StripLattice better(
      @Nullable StripLattice one, @Nullable StripLattice other, double factor) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    return other.isBetterThan(one, factor) ? other : one;
  }

  private @Nullable StripLattice best(Surface on, double bearing, int blockRows) {
    StripLattice best = null;
    Frame frame = new Frame(bearing);
    double plotM = plotM(frame.onto(on.measurable()).getEnvelopeInternal(), blockRows);
    StripLattice.Rule rule = new StripLattice.Rule(shape, plots, passM, needed);
    for (int step = 0; step < OFFSETS && plotM >= SHORTEST_M; step++) {
      double shiftM = step * plots.passes() * passM / OFFSETS;
      best = better(best, StripLattice.of(on, frame, rule, plotM, shiftM), 1);
    }
    return best;
  }

  private double plotM(Envelope box, int blockRows) {
    Double length = plots.lengthM();
    return length == null
        ? Math.floor(100 * shape.plotM(box.getHeight(), blockRows)) / 100
        : length;
  }
}
