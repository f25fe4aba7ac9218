package leafturn.reports.figure;

import java.util.List;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.reports.QuantityWords;

/** What a drawing to scale is read by: a scale bar at its foot, north at its top right. */
final class MapMarks {
  private static final double MOST_BAR_FRACTION = 0.3;
  private static final double ARROW_PX = 30;

  private final Svg svg;
  private final OutlineView view;
  private final double typePx;

  MapMarks(Svg svg, OutlineView view, double typePx) {
    this.svg = svg;
    this.view = view;
    this.typePx = typePx;
  }

  /** Draws a bar of a round length. */
  void scaleBar(Units units) {
    double unitPx = view.pxPerM() * Measure.DISTANCE.kept(1, units);
    double length = RoundSteps.atMost(MOST_BAR_FRACTION * view.size().width() / unitPx);
    double y = view.size().height() - 0.5 * typePx;
    Point from = new Point(1, y);
    Point to = new Point(1 + length * unitPx, y);
    double tick = 0.4 * typePx;
    svg.strokes(
        List.of(
            List.of(from, to),
            List.of(from, new Point(from.x(), y - tick)),
            List.of(to, new Point(to.x(), y - tick))),
        "scale-bar");
    String words = QuantityWords.quantity(length, Measure.DISTANCE.unit(units).symbol());
    svg.words(label(new Point(to.x() + 7, y), Label.Align.START, words));
  }

  /** Draws an arrow to the north and tells the room it takes. */
  Box northArrow() {
    double x = view.size().width() - 14;
    double top = typePx + 6;
    Point tip = new Point(x, top);
    Point tail = new Point(x, top + ARROW_PX);
    svg.words(label(new Point(x, top - 5), Label.Align.MIDDLE, "N"));
    svg.strokes(
        List.of(
            List.of(tail, tip), List.of(new Point(x - 5, top + 9), tip, new Point(x + 5, top + 9))),
        "north");
    return new Box(x - 10, 0, 20, top + ARROW_PX + 2);
  }

  private Label label(Point place, Label.Align align, String words) {
    return new Label(place, align, typePx, "words", words);
  }
}
