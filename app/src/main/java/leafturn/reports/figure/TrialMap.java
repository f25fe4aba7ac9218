package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.records.shape.Outline;
import leafturn.trials.design.ground.Place;
import leafturn.trials.design.layout.Core;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import leafturn.trials.design.layout.Peg;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/**
 * The plots of a trial on a lawn, to scale and north up: turf, plots with their codes, what of them
 * is measured, pegs by number, the two fixed corners, and a scale bar.
 */
public final class TrialMap {
  private static final double CORE_PX = 2;
  private static final double CORE_TYPE_PX = 9;
  private static final double PEG_PX = 3;
  private static final double AWAY_PX = 13;

  /** Plots that could be drawn so much larger are drawn a second time, enlarged. */
  private static final double WORTH_ENLARGING = 1.4;

  /** Most height of the whole lawn above its enlarged plots, without margins and foot. */
  private static final double WHOLE_PX = 130;

  private static final double AROUND_FRACTION = 0.06;
  private static final double HEAD_PX = 30;
  private static final double MOST_OF_MAP = 0.67;

  private final LaidLawn lawn;
  private final Look look;
  private final OutlineFormat format;
  private final OutlineView view;
  private final Svg svg;
  private final LabelPlaces labels;
  private final MapLabels names;
  private final MapShapes shapes;

  /**
   * What a map shows besides.
   *
   * @param arms the treatments in order, or none on a map for those who must not know them
   * @param cores to be marked
   * @param units of the scale bar
   */
  public record Look(List<String> arms, List<Core> cores, Units units) {
    public Look {
      arms = List.copyOf(arms);
      cores = List.copyOf(cores);
    }
  }

  private TrialMap(LaidLawn lawn, OutlineFormat format, OutlineView view, Svg svg, Look look) {
    this.lawn = lawn;
    this.look = look;
    this.format = format;
    this.view = view;
    this.svg = svg;
    labels = new LabelPlaces(view.size());
    shapes = new MapShapes(view);
    names = new MapLabels(view, svg, labels, plots(lawn), format.typePx);
  }

  /** The map of a lawn as SVG; its styles come from the page, or from {@link TrialMapFile}. */
  public static String draw(LaidLawn lawn, OutlineFormat format, Look look) {
    return draw(lawn, format, format.mostHeightPx, look);
  }

  /** The same, not higher than some px; with the plots enlarged below where they are small. */
  static String draw(LaidLawn lawn, OutlineFormat format, double mostHeightPx, Look look) {
    Envelope turf = lawn.surface().turf().getEnvelopeInternal();
    Envelope window = plots(lawn).getEnvelopeInternal();
    window.expandBy(AROUND_FRACTION * window.getWidth(), AROUND_FRACTION * window.getHeight());
    OutlineView whole = OutlineView.of(bounds(turf), format, mostHeightPx);
    double nearer = OutlineView.of(bounds(window), format, mostHeightPx).pxPerM();
    if (nearer < WORTH_ENLARGING * whole.pxPerM()) {
      Svg svg = opened(lawn, format, whole.size());
      new TrialMap(lawn, format, whole, svg, look).all();
      return svg.close();
    }
    return enlarged(lawn, format, window, look);
  }

  /** The whole lawn and below it the part of the plots; where a map is small, that part alone. */
  private static String enlarged(LaidLawn lawn, OutlineFormat format, Envelope window, Look look) {
    Envelope turf = lawn.surface().turf().getEnvelopeInternal();
    double wholePx = WHOLE_PX + 2 * format.marginPx + format.footPx();
    if (wholePx > MOST_OF_MAP * format.mostHeightPx) {
      OutlineView near = OutlineView.of(bounds(window), format);
      Svg svg = opened(lawn, format, near.size());
      new TrialMap(lawn, format, near, svg, look).part(window);
      return svg.close();
    }
    OutlineView whole = OutlineView.of(bounds(turf), format, wholePx);
    double top = whole.size().height() + HEAD_PX;
    double nearPx = format.mostHeightPx - (format.isSheet() ? top : 0);
    OutlineView near = OutlineView.of(bounds(window), format, nearPx);
    Svg svg = opened(lawn, format, new Box(0, 0, format.widthPx, top + near.size().height()));
    new TrialMap(lawn, format, whole, svg, look).overview(window);
    svg.words(
        new Label(
            new Point(1, top - 0.3 * HEAD_PX),
            Label.Align.START,
            format.typePx,
            "words strong",
            "The plots, enlarged"));
    svg.openMoved(top);
    new TrialMap(lawn, format, near, svg, look).part(window);
    svg.closeMoved();
    return svg.close();
  }

  private static Outline.Bounds bounds(Envelope box) {
    return new Outline.Bounds(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  private static Svg opened(LaidLawn lawn, OutlineFormat format, Box size) {
    String words =
        "Map of %s with %d plots and %d pegs"
            .formatted(lawn.lawn().name(), lawn.plots().size(), lawn.pegs().size());
    return Svg.labelled(size, format.cssClass + " trial-map", words);
  }

  private void all() {
    svg.rings(shapes.rings(lawn.surface().turf()), "outline-turf");
    plots();
    fixed("A", lawn.fixed().a());
    fixed("B", lawn.fixed().b());
    named();
  }

  /** The whole lawn without words on its plots, and the part that is enlarged below. */
  private void overview(Envelope window) {
    svg.rings(shapes.rings(lawn.surface().turf()), "outline-turf");
    lawn.plots().forEach(plot -> svg.rings(shapes.rings(plot.place().plot()), armClass(plot)));
    svg.rings(shapes.rings(lawn.surface().turf().getFactory().toGeometry(window)), "enlarged-part");
    marks();
    fixed("A", lawn.fixed().a());
    fixed("B", lawn.fixed().b());
  }

  /** The part of the lawn that the plots take, with the edges that run through it. */
  private void part(Envelope window) {
    Geometry turf = lawn.surface().turf();
    Geometry part = turf.getFactory().toGeometry(window);
    svg.rings(shapes.rings(turf.intersection(part)), "turf-part");
    Geometry edges = turf.getBoundary().intersection(part);
    for (int i = 0; i < edges.getNumGeometries(); i++) {
      svg.openLine(shapes.line(edges.getGeometryN(i).getCoordinates()), "turf-edge");
    }
    plots();
    for (Coordinate corner : List.of(lawn.fixed().a(), lawn.fixed().b())) {
      if (window.contains(corner)) {
        fixed(corner.equals(lawn.fixed().a()) ? "A" : "B", corner);
      }
    }
    named();
  }

  private void plots() {
    lawn.dropped()
        .forEach(dropped -> svg.rings(shapes.rings(dropped.place().plot()), "plot-dropped"));
    lawn.plots().forEach(this::plot);
    marks();
  }

  private void named() {
    lawn.pegs().forEach(this::peg);
    look.cores().forEach(this::core);
    double along = lawn.frame().bearingDeg();
    for (LaidPlot plot : lawn.plots()) {
      Point middle = names.name(plot.code(), plot.place().plot(), along, "words strong");
      treatment(plot, middle);
    }
    lawn.dropped()
        .forEach(each -> names.name(each.mark(), each.place().plot(), along, "words soft"));
    lawn.pegs().forEach(peg -> beside(Integer.toString(peg.number()), at(peg), "words"));
    look.cores().forEach(this::number);
  }

  private static Geometry plots(LaidLawn lawn) {
    return UnaryUnionOp.union(
        Stream.concat(
                lawn.plots().stream().map(LaidPlot::place),
                lawn.dropped().stream().map(DroppedPlot::place))
            .map(Place::plot)
            .toList());
  }

  private void plot(LaidPlot plot) {
    svg.rings(shapes.rings(plot.place().plot()), armClass(plot));
    svg.rings(shapes.rings(plot.place().measured()), "plot-measured");
    if (!plot.place().lost().isEmpty()) {
      svg.rings(shapes.rings(plot.place().lost()), "plot-dropped");
    }
  }

  private String armClass(LaidPlot plot) {
    return "plot plot-" + (look.arms().indexOf(plot.unit().arm()) + 1);
  }

  /** A dot for the first bag, a ring for the others. */
  private void core(Core core) {
    Point at = view.point(core.xM(), core.yM());
    svg.circle(at, CORE_PX, core.bag() == 1 ? "core" : "core other-bag");
    labels.keepFree(new Box(at.x() - CORE_PX, at.y() - CORE_PX, 2 * CORE_PX, 2 * CORE_PX));
  }

  /** A core's number where it fits. */
  private void number(Core core) {
    Point at = view.point(core.xM(), core.yM());
    Point right = new Point(at.x() + 4, at.y() + 3);
    Point left = new Point(at.x() - 12, at.y() + 3);
    Label number =
        new Label(right, Label.Align.START, CORE_TYPE_PX, "words", Integer.toString(core.number()));
    labels.place(number, List.of(right, left)).ifPresent(svg::words);
  }

  private void marks() {
    MapMarks marks = new MapMarks(svg, view, format.typePx);
    marks.scaleBar(look.units());
    labels.keepFree(marks.northArrow());
    double foot = format.footPx();
    labels.keepFree(new Box(0, view.size().height() - foot, view.size().width(), foot));
  }

  private void fixed(String name, Coordinate place) {
    Point at = view.point(place.x, place.y);
    Box mark = new Box(at.x() - 4, at.y() - 4, 8, 8);
    svg.rectangle(mark, "fixed-corner");
    labels.keepFree(mark);
    beside(name, at, "words strong");
  }

  private void peg(Peg peg) {
    Point at = at(peg);
    svg.circle(at, PEG_PX, "peg");
    labels.keepFree(new Box(at.x() - PEG_PX, at.y() - PEG_PX, 2 * PEG_PX, 2 * PEG_PX));
  }

  private Point at(Peg peg) {
    return view.point(peg.at().xM(), peg.at().yM());
  }

  /**
   * Words beside a mark, off the lines through it and away from the middle of the lawn where there
   * is room; else with a line.
   */
  private void beside(String words, Point mark, String cssClass) {
    double middleX = view.size().width() / 2;
    double middleY = view.size().height() / 2;
    double outX = Math.signum(mark.x() - middleX);
    double outY = Math.signum(mark.y() - middleY);
    List<Point> places = new ArrayList<>();
    double base = mark.y() + 0.3 * format.typePx;
    for (double[] step :
        new double[][] {
          {outX, outY}, {outX, -outY}, {-outX, outY}, {0, outY}, {outX, 0}, {0, -outY}, {-outX, 0}
        }) {
      places.add(new Point(mark.x() + AWAY_PX * step[0], base + AWAY_PX * step[1]));
    }
    Label label = new Label(places.get(0), Label.Align.MIDDLE, format.typePx, cssClass, words);
    labels
        .place(label, places)
        .ifPresentOrElse(svg::words, () -> names.withLine(words, List.of(mark), cssClass));
  }

  /** The treatment of a plot below its code, where there is room and it may be known. */
  private void treatment(LaidPlot plot, @Nullable Point code) {
    Envelope box = plot.place().plot().getEnvelopeInternal();
    String arm = plot.unit().treatment();
    boolean roomy =
        TextWidth.ofPx(arm, format.typePx) < view.pxPerM() * box.getWidth()
            && 3 * format.typePx < view.pxPerM() * box.getHeight();
    if (code != null && roomy && !look.arms().isEmpty()) {
      Point below = new Point(code.x(), code.y() + 1.5 * format.typePx);
      Label label = new Label(below, Label.Align.MIDDLE, format.typePx, "words", arm);
      labels.place(label, List.of(below)).ifPresent(svg::words);
    }
  }
}
