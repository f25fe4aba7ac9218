package leafturn.trials.design.ground;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import leafturn.trials.design.PlotRule;
import leafturn.trials.design.ground.StripBlocks.Dropped;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/** Strips in one direction from one place on, and the blocks that fit on them. */
final class StripLattice {
  /** A plot with less than this share of its measured part is not used: a convention of ours. */
  private static final double LEAST_SHARE = 0.5;

  /** Of a plot with less than this share nobody would think; it is not told. */
  private static final double WORTH_TELLING = 0.1;

  /** A cause that takes less than this share of the part to be measured is not told. */
  private static final double WORTH_NAMING = 0.05;

  private static final double SAME_AREA_M2 = 0.01;

  private final Surface surface;
  private final Frame frame;
  private final Rule rule;
  private final double plotM;
  private final double shiftM;
  private final List<Block> found = new ArrayList<>();
  private final List<Cell> cells = new ArrayList<>();
  private final List<List<List<Cell>>> rows = new ArrayList<>();
  private double fullM2;

  /**
   * What is looked for.
   *
   * @param shape of a block
   * @param plots rule of plots
   * @param passM width of a mower pass, m
   * @param needed number of blocks
   */
  record Rule(BlockShape shape, PlotRule plots, double passM, int needed) {
    double stripM() {
      return plots.passes() * passM;
    }

    double guardM() {
      return plots.guardPasses() * passM;
    }

    double measuredM2(double plotM) {
      return (stripM() - 2 * guardM()) * Math.max(0, plotM - 2 * shape.endM());
    }
  }

  /**
   * A place on the lattice, in the frame; a cell is a row of a block on one strip.
   *
   * @param inner what of it would be measured on open turf
   */
  private record Cell(Place place, double measuredM2, Envelope inner) {}

  private record Block(int order, List<Cell> cells) {
    double measuredM2() {
      return cells.stream().mapToDouble(Cell::measuredM2).sum();
    }

    /** Whether a plot is one of its own, not one that merely looks the same. */
    boolean holds(Cell cell) {
      return cells.stream().anyMatch(each -> each == cell);
    }
  }

  private StripLattice(Surface surface, Frame frame, Rule rule, double plotM, double shiftM) {
    this.surface = surface;
    this.frame = frame;
    this.rule = rule;
    this.plotM = plotM;
    this.shiftM = shiftM;
  }

  static StripLattice of(Surface surface, Frame frame, Rule rule, double plotM, double shiftM) {
    StripLattice lattice = new StripLattice(surface, frame, rule, plotM, shiftM);
    lattice.fill();
    return lattice;
  }

  /** The same strips on another form of the surface. */
  StripLattice on(Surface other) {
    return of(other, frame, rule, plotM, shiftM);
  }

  int found() {
    return found.size();
  }

  /**
   * Whether it has more of the blocks that are needed, or as many and more to measure.
   *
   * @param factor times the other's to measure that it must have
   */
  boolean isBetterThan(StripLattice other, double factor) {
    int here = Math.min(found(), rule.needed());
    int there = Math.min(other.found(), rule.needed());
    return here != there ? here > there : chosenM2() > factor * other.chosenM2() + SAME_AREA_M2;
  }

  private double chosenM2() {
    return chosen().stream().mapToDouble(Block::measuredM2).sum();
  }

  private void fill() {
    Geometry turf = frame.onto(surface.turf());
    Geometry measurable = frame.onto(surface.measurable());
    Envelope box = measurable.getEnvelopeInternal();
    double blockM = rule.shape().lengthM(plotM);
    int blockRows =
        (int)
            Math.floor(
                (box.getHeight() + BlockShape.TURNING_M + 1e-9) / (blockM + BlockShape.TURNING_M));
    double spareM = box.getHeight() - blockRows * blockM - (blockRows - 1) * BlockShape.TURNING_M;
    int strips = (int) Math.floor((box.getWidth() - shiftM + 1e-9) / rule.stripM() + 0.5);
    for (int blockRow = 0; blockRow < blockRows; blockRow++) {
      double from = box.getMinY() + spareM / 2 + blockRow * (blockM + BlockShape.TURNING_M);
      List<List<Cell>> row = new ArrayList<>();
      for (int strip = 0; strip < strips; strip++) {
        double left = box.getMinX() + shiftM + strip * rule.stripM();
        row.add(column(turf, measurable, left, from));
      }
      rows.add(row);
    }
    fullM2 = fullM2();
    rows.forEach(this::blocksOf);
  }

  /** The plots of one strip in one row of blocks. */
  private List<Cell> column(Geometry turf, Geometry measurable, double left, double from) {
    Envelope strip = new Envelope(left, left + rule.stripM(), from, from + lengthOfBlock());
    Geometry turfHere = Surface.within(turf, strip);
    Geometry measurableHere = Surface.within(measurable, strip);
    List<Cell> column = new ArrayList<>();
    for (int row = 0; row < rule.shape().rows(); row++) {
      double start = from + row * (plotM + rule.shape().gapM());
      Envelope plot = new Envelope(left, left + rule.stripM(), start, start + plotM);
      Envelope inner =
          new Envelope(
              left + rule.guardM(),
              left + rule.stripM() - rule.guardM(),
              start + rule.shape().endM(),
              start + Math.max(plotM - rule.shape().endM(), rule.shape().endM()));
      Geometry all = Surface.within(turfHere, plot);
      Geometry largest = Surface.largestPiece(all);
      Place place =
          new Place(
              largest,
              Surface.largestPiece(Surface.within(measurableHere, inner)),
              Surface.without(all, largest));
      Cell cell = new Cell(place, place.measured().getArea(), inner);
      cells.add(cell);
      column.add(cell);
    }
    return column;
  }

  private double lengthOfBlock() {
    return rule.shape().lengthM(plotM);
  }

  /** What a plot has to measure: by its sizes, or, where it is as long as can be, the most. */
  private double fullM2() {
    double most = cells.stream().mapToDouble(Cell::measuredM2).max().orElse(0);
    return rule.plots().lengthM() == null ? most : rule.measuredM2(plotM);
  }

  private boolean isUsable(Cell cell) {
    return cell.measuredM2() > 0 && cell.measuredM2() >= LEAST_SHARE * fullM2;
  }

  private void blocksOf(List<List<Cell>> row) {
    List<List<Cell>> run = new ArrayList<>();
    for (List<Cell> column : row) {
      if (!column.stream().allMatch(this::isUsable)) {
        run.clear();
        continue;
      }
      run.add(column);
      if (run.size() == rule.shape().columns()) {
        found.add(new Block(found.size(), rowByRow(run)));
        run.clear();
      }
    }
  }

  private List<Cell> rowByRow(List<List<Cell>> columns) {
    List<Cell> ordered = new ArrayList<>();
    for (int row = 0; row < rule.shape().rows(); row++) {
      for (List<Cell> column : columns) {
        ordered.add(column.get(row));
      }
    }
    return ordered;
  }

  /** The blocks with the most to measure, in their order on the lawn. */
  private List<Block> chosen() {
    return found.stream()
        .sorted(Comparator.comparingLong((Block block) -> -Math.round(100 * block.measuredM2())))
        .limit(rule.needed())
        .sorted(Comparator.comparingInt(Block::order))
        .toList();
  }

  StripBlocks blocks() {
    List<Block> chosen = chosen();
    List<Dropped> dropped = new ArrayList<>();
    int unused = 0;
    for (List<List<Cell>> row : rows) {
      List<Integer> laid = laid(row, chosen);
      for (int strip = 0; strip < row.size(); strip++) {
        boolean between = !laid.isEmpty() && laid.get(0) < strip && strip < laid.get(1);
        for (Cell cell : row.get(strip)) {
          String why = whyNot(cell);
          if (why != null && between) {
            dropped.add(new Dropped(back(cell.place()), why));
          }
          unused += why != null && !between ? 1 : 0;
        }
      }
    }
    return new StripBlocks(
        frame,
        rule.stripM(),
        plotM,
        chosen.stream()
            .map(block -> block.cells().stream().map(Cell::place).map(this::back).toList())
            .toList(),
        dropped,
        unused,
        found.size() - chosen.size());
  }

  /** The first and the last strip of a row that belong to a block; empty where none does. */
  private static List<Integer> laid(List<List<Cell>> row, List<Block> chosen) {
    int first = -1;
    int last = -1;
    for (int strip = 0; strip < row.size(); strip++) {
      Cell cell = row.get(strip).get(0);
      if (chosen.stream().anyMatch(block -> block.holds(cell))) {
        first = first < 0 ? strip : first;
        last = strip;
      }
    }
    return first < 0 ? List.of() : List.of(first, last);
  }

  private @Nullable String whyNot(Cell cell) {
    double share = fullM2 > 0 ? cell.measuredM2() / fullM2 : 0;
    return isUsable(cell) || share < WORTH_TELLING
        ? null
        : String.format(
            Locale.ROOT,
            "%.0f %% of its measured part can be used, and half is needed: %s",
            Math.floor(100 * share),
            String.join(", ", causes(cell)));
  }

  private List<String> causes(Cell cell) {
    double innerM2 = cell.inner().getArea();
    double inside = Surface.within(frame.onto(surface.fromEdge()), cell.inner()).getArea();
    double open = Surface.within(frame.onto(surface.measurable()), cell.inner()).getArea();
    List<String> causes = new ArrayList<>();
    if (innerM2 - inside > WORTH_NAMING * innerM2) {
      causes.add("it reaches over the lawn's edge or too near it");
    }
    if (inside - open > WORTH_NAMING * innerM2) {
      causes.add("a bed lies in it or too near it");
    }
    if (open - cell.measuredM2() > WORTH_NAMING * innerM2) {
      causes.add("it falls into parts");
    }
    return causes;
  }

  private Place back(Place place) {
    return new Place(
        frame.back(place.plot()), frame.back(place.measured()), frame.back(place.lost()));
  }
}
