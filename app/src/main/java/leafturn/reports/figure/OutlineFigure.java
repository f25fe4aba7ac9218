package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.records.shape.Corner;
import leafturn.records.shape.Outline;
import leafturn.records.shape.Patch;
import leafturn.records.shape.Ring;
import leafturn.reports.QuantityWords;

/**
 * The outline of a lawn to scale on a plain grid, with the lengths of its longer sides, a scale bar
 * and, where its place on the earth is known, an arrow to the north.
 */
public final class OutlineFigure {
  /** Lengths on more sides than this would be a thicket; the list of corners has them all. */
  private static final int MOST_LENGTHS = 40;

  private static final double LEAST_GRID_PX = 11;

  private final Outline outline;
  private final OutlineFormat format;
  private final Units units;
  private final double unitM;
  private final OutlineView view;
  private final Svg svg;
  private final LabelPlaces labels;

  /**
   * A side of a ring; the lawn lies on its left.
   *
   * @param outward 1 when its length is better written outside the lawn, -1 when inside
   */
  private record Side(Corner from, Corner to, int outward) {
    double lengthM() {
      return from.distanceM(to);
    }
  }

  private OutlineFigure(Outline outline, OutlineFormat format, Units units) {
    this.outline = outline;
    this.format = format;
    this.units = units;
    unitM = Measure.DISTANCE.kept(1, units);
    view = OutlineView.of(outline.bounds(), format);
    svg =
        format.isLabelled()
            ? Svg.labelled(view.size(), format.cssClass, words())
            : Svg.decorative(view.size(), format.cssClass);
    labels = new LabelPlaces(view.size());
  }

  /** The figure as SVG; the small one is for a place where name and area stand beside it. */
  public static String draw(Outline outline, OutlineFormat format, Units units) {
    return new OutlineFigure(outline, format, units).draw();
  }

  private String words() {
    String area =
        QuantityWords.whole(
            Measure.AREA.shown(outline.areaM2(), units), Measure.AREA.unit(units).symbol());
    String round = length(outline.perimeterM());
    return "Outline of %s, its edges %s long".formatted(area, round);
  }

  private String draw() {
    if (format.isLabelled()) {
      grid();
    }
    svg.rings(outline.rings().stream().map(view::line).toList(), "outline-turf");
    if (format.isLabelled()) {
      marks();
      lengths();
    }
    return svg.close();
  }

  private void marks() {
    MapMarks marks = new MapMarks(svg, view, format.typePx);
    marks.scaleBar(units);
    if (outline.anchor() != null) {
      labels.keepFree(marks.northArrow());
    }
  }

  private void grid() {
    double stepPx = RoundSteps.atLeast(LEAST_GRID_PX / (view.pxPerM() * unitM)) * gridUnitPx();
    svg.strokes(gridLines(stepPx), "grid-line");
    svg.strokes(gridLines(5 * stepPx), "grid-line fifth");
  }

  private double gridUnitPx() {
    return view.pxPerM() * unitM;
  }

  /** Lines through the origin of the outline's grid and to both sides of it. */
  private List<List<Point>> gridLines(double stepPx) {
    double foot = view.size().height() - format.footPx();
    List<List<Point>> lines = new ArrayList<>();
    double firstX = view.left() - Math.floor(view.left() / stepPx) * stepPx;
    for (double x = firstX; x <= view.size().width(); x += stepPx) {
      lines.add(List.of(new Point(x, 0), new Point(x, foot)));
    }
    double firstY = view.bottom() - Math.floor(view.bottom() / stepPx) * stepPx;
    for (double y = firstY; y <= foot; y += stepPx) {
      lines.add(List.of(new Point(0, y), new Point(view.size().width(), y)));
    }
    return lines;
  }

  private void lengths() {
    for (Ring ring : outline.rings()) {
      List<Point> line = new ArrayList<>(view.line(ring));
      line.add(line.get(0));
      labels.keepFree(line);
    }
    double foot = view.size().height() - format.footPx();
    labels.keepFree(new Box(0, foot, view.size().width(), format.footPx()));
    sides().stream()
        .sorted(Comparator.comparingDouble(Side::lengthM).reversed())
        .limit(MOST_LENGTHS)
        .forEach(this::length);
  }

  private List<Side> sides() {
    List<Side> sides = new ArrayList<>();
    for (Patch patch : outline.patches()) {
      for (Ring ring : patch.rings()) {
        int outward = ring.equals(patch.edge()) ? 1 : -1;
        for (int i = 0; i < ring.corners().size(); i++) {
          sides.add(new Side(ring.corners().get(i), ring.next(i), outward));
        }
      }
    }
    return sides;
  }

  /** Writes the length of a side beside it: out of the way of the lines, or not at all. */
  private void length(Side side) {
    String words = length(side.lengthM());
    double size = format.typePx;
    double eastward = (side.to().xM() - side.from().xM()) / side.lengthM();
    double northward = (side.to().yM() - side.from().yM()) / side.lengthM();
    double room = TextWidth.ofPx(words, size) / 2 + 4;
    double away = Math.abs(northward) * room + Math.abs(eastward) * 0.6 * size + 4;
    List<Point> places = new ArrayList<>();
    for (double outward : new double[] {side.outward() * away, -side.outward() * away}) {
      for (double along : new double[] {0.5, 0.35, 0.65}) {
        Point on =
            view.point(
                side.from().xM() + along * (side.to().xM() - side.from().xM()),
                side.from().yM() + along * (side.to().yM() - side.from().yM()));
        double x = on.x() + outward * northward;
        double y = on.y() + outward * eastward;
        places.add(new Point(tenth(x), tenth(y + 0.3 * size)));
      }
    }
    labels.place(label(places.get(0), Label.Align.MIDDLE, words), places).ifPresent(svg::words);
  }

  /** As it will be written, so that what was found free stays free. */
  private static double tenth(double px) {
    return Math.rint(10 * px) / 10;
  }

  private String length(double lengthM) {
    String number = QuantityWords.oneDecimal(Measure.DISTANCE.shown(lengthM, units));
    return number + QuantityWords.THIN + unit();
  }

  private String unit() {
    return Measure.DISTANCE.unit(units).symbol();
  }

  private Label label(Point place, Label.Align align, String words) {
    return new Label(place, align, format.typePx, "words", words);
  }
}
