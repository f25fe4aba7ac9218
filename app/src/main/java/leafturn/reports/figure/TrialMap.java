package leafturn.reports.figure;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import leafturn.quantity.Units;
import leafturn.trials.design.ground.Place;
import leafturn.trials.design.layout.Core;
import leafturn.trials.design.layout.DroppedPlot;
import leafturn.trials.design.layout.LaidLawn;
import leafturn.trials.design.layout.LaidPlot;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.algorithm.MinimumDiameter;
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

  /** From line to line, of the type size. */
  private static final double LINE_APART = 1.15;

  /** A plot so thick bears its code in type that is read without a glass. */
  private static final double READABLE_PX = 15;

  /** Below the head of a sheet. */
  private static final double WHOLE_SHEET_PX = 880;

  private final LaidLawn lawn;
  private final Look look;
  private final OutlineFormat format;
  private final OutlineView view;
  private final Svg svg;
  private final LabelPlaces labels;
  private final MapLabels names;
  private final MapShapes shapes;
  private final MapPegs pegs;

  /** Largest type of the codes of plots. */
  private final double mostPx;

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
    pegs = new MapPegs(lawn, view, svg, labels, names);
    pegs.keepFree();
    Map<String, Geometry> byCode = new LinkedHashMap<>();
    lawn.plots().forEach(plot -> byCode.put(plot.code(), plot.place().plot()));
    mostPx = names.commonSizePx(byCode, lawn.frame().bearingDeg());
  }

  /** The map of a lawn as SVG; its styles come from the page, or from {@link TrialMapFile}. */
  public static String draw(LaidLawn lawn, OutlineFormat format, Look look) {
    return draw(lawn, format, heightPx(lawn, format), look);
  }

  /** Most height: the usual one, or a whole sheet for plots that would be too thin in it. */
  static double heightPx(LaidLawn lawn, OutlineFormat format) {
    double usual = format.mostHeightPx;
    return isReadable(lawn, format, usual) || format.isPartOfSheet() ? usual : WHOLE_SHEET_PX;
  }

  /** The same, not higher than some px; with the plots enlarged below where they are small. */
  static String draw(LaidLawn lawn, OutlineFormat format, double mostHeightPx, Look look) {
    MapViews views = MapViews.of(lawn, plots(lawn), format, mostHeightPx);
    OutlineView whole = views.whole();
    OutlineView near = views.near();
    double top = whole == null ? 0 : whole.size().height();
    double head = whole == null || near == null ? 0 : MapViews.HEAD_PX;
    double nearPx = near == null ? 0 : near.size().height();
    Svg svg = opened(lawn, format, new Box(0, 0, format.widthPx, top + head + nearPx));
    if (whole != null && near == null) {
      new TrialMap(lawn, format, whole, svg, look).all();
    } else if (whole != null) {
      new TrialMap(lawn, format, whole, svg, look).overview(views.window());
      Point place = new Point(1, top + 0.7 * head);
      svg.words(
          new Label(
              place, Label.Align.START, format.typePx, "words strong", "The plots, enlarged"));
    }
    if (near != null && whole != null) {
      svg.openMoved(top + head);
      new TrialMap(lawn, format, near, svg, look).part(views.window());
      svg.closeMoved();
    } else if (near != null) {
      new TrialMap(lawn, format, near, svg, look).part(views.window());
    }
    return svg.close();
  }

  /** Whether the thinnest plot of a map of some height is thick enough for its code. */
  static boolean isReadable(LaidLawn lawn, OutlineFormat format, double mostHeightPx) {
    return MapViews.of(lawn, plots(lawn), format, mostHeightPx).thinnestPx(lawn) >= READABLE_PX;
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
    shapes.rings(part).forEach(labels::keepFree);
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
    look.cores().forEach(this::core);
    double along = lawn.frame().bearingDeg();
    for (LaidPlot plot : lawn.plots()) {
      Point middle = names.name(plot.code(), plot.place().plot(), along, mostPx, "words strong");
      treatment(plot, middle);
    }
    lawn.dropped()
        .forEach(each -> names.name(each.mark(), each.place().plot(), along, mostPx, "words soft"));
    pegs.draw();
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
    Geometry measured = plot.place().measured();
    boolean roomy = view.pxPerM() * new MinimumDiameter(measured).getLength() > LINE_APART * mostPx;
    if (roomy) { // else its lines run through the name of the plot
      svg.rings(shapes.rings(measured), "plot-measured");
    }
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
    pegs.beside(name, at, "words strong");
  }

  /** The treatment of a plot below its code, where there is room and it may be known. */
  private void treatment(LaidPlot plot, @Nullable Point code) {
    if (code != null && !look.arms().isEmpty()) {
      Point below = new Point(code.x(), code.y() + LINE_APART * format.typePx);
      names.nameAt(below, plot.unit().treatment(), plot.place().plot(), "words");
    }
  }
}
