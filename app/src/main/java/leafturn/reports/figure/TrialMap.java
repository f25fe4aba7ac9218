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
import org.locationtech.jts.geom.Polygon;
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

  private final LaidLawn lawn;
  private final Look look;
  private final OutlineFormat format;
  private final OutlineView view;
  private final Svg svg;
  private final LabelPlaces labels;
  private final MapLabels names;

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

  private TrialMap(LaidLawn lawn, OutlineFormat format, Look look) {
    this.lawn = lawn;
    this.look = look;
    this.format = format;
    Envelope box = lawn.surface().turf().getEnvelopeInternal();
    view =
        OutlineView.of(
            new Outline.Bounds(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY()), format);
    svg = Svg.labelled(view.size(), format.cssClass + " trial-map", words());
    labels = new LabelPlaces(view.size());
    names = new MapLabels(view, svg, labels, plots(lawn), format.typePx);
  }

  /** The map of a lawn as SVG; its styles come from the page, or from {@link TrialMapFile}. */
  public static String draw(LaidLawn lawn, OutlineFormat format, Look look) {
    return new TrialMap(lawn, format, look).draw();
  }

  private String words() {
    return "Map of %s with %d plots and %d pegs"
        .formatted(lawn.lawn().name(), lawn.plots().size(), lawn.pegs().size());
  }

  private String draw() {
    svg.rings(rings(lawn.surface().turf()), "outline-turf");
    lawn.dropped().forEach(dropped -> svg.rings(rings(dropped.place().plot()), "plot-dropped"));
    lawn.plots().forEach(this::plot);
    marks();
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
    return svg.close();
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
    svg.rings(rings(plot.place().plot()), armClass(plot));
    svg.rings(rings(plot.place().measured()), "plot-measured");
    if (!plot.place().lost().isEmpty()) {
      svg.rings(rings(plot.place().lost()), "plot-dropped");
    }
  }

  private String armClass(LaidPlot plot) {
    return "plot plot-" + (look.arms().indexOf(plot.unit().arm()) + 1);
  }

  /** A dot for the first bag, a ring for the others. */
  private void core(Core core) {
    Point at = at(core.xM(), core.yM());
    svg.circle(at, CORE_PX, core.bag() == 1 ? "core" : "core other-bag");
    labels.keepFree(new Box(at.x() - CORE_PX, at.y() - CORE_PX, 2 * CORE_PX, 2 * CORE_PX));
  }

  /** A core's number where it fits. */
  private void number(Core core) {
    Point at = at(core.xM(), core.yM());
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
    fixed("A", lawn.fixed().a());
    fixed("B", lawn.fixed().b());
  }

  private void fixed(String name, Coordinate place) {
    Point at = at(place.x, place.y);
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
    return at(peg.at().xM(), peg.at().yM());
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

  private Point at(double xM, double yM) {
    return view.point(xM, yM);
  }

  private List<List<Point>> rings(Geometry geometry) {
    List<List<Point>> rings = new ArrayList<>();
    for (int piece = 0; piece < geometry.getNumGeometries(); piece++) {
      Polygon polygon = (Polygon) geometry.getGeometryN(piece);
      rings.add(line(polygon.getExteriorRing().getCoordinates()));
      for (int hole = 0; hole < polygon.getNumInteriorRing(); hole++) {
        rings.add(line(polygon.getInteriorRingN(hole).getCoordinates()));
      }
    }
    return rings.stream().filter(ring -> !ring.isEmpty()).toList();
  }

  private List<Point> line(Coordinate[] ring) {
    List<Point> line = new ArrayList<>();
    for (int i = 0; i + 1 < ring.length; i++) {
      line.add(at(ring[i].x, ring[i].y));
    }
    return line;
  }
}
