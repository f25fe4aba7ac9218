package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leafturn.advice.call.Outlook.PastDay;
import leafturn.quantity.DisplayNumber;

/** A low panel of the season figure for one daily quantity, as bars or as a line. */
final class SmallPanel {
  private final SeasonFrame frame;
  private final String title;
  private final ToDoubleFunction<PastDay> quantity;
  private final Box plot;
  private final Scale scale;

  /**
   * @param title the quantity with its unit
   * @param top where the panel with its title begins, px
   * @param most value at the panel's upper edge, above 0
   */
  SmallPanel(
      SeasonFrame frame,
      String title,
      ToDoubleFunction<PastDay> quantity,
      double top,
      double most) {
    this.frame = frame;
    this.title = title;
    this.quantity = quantity;
    double titleHeight = 1.6 * frame.format().typePx;
    plot =
        new Box(
            frame.leftPx(),
            top + titleHeight,
            frame.rightPx() - frame.leftPx(),
            frame.format().smallPanelPx);
    scale = new Scale(0, most, plot.bottom(), plot.y());
  }

  double bottom() {
    return plot.bottom();
  }

  void bars(Svg svg, String cssClass) {
    ground(svg, scale.to());
    double width = Math.max(1.5, 0.72 * frame.dayWidthPx());
    for (PastDay day : frame.past()) {
      double value = quantity.applyAsDouble(day);
      if (value > 0) {
        double top = Math.min(scale.px(value), plot.bottom() - 1);
        double left = frame.x(day.day()) - width / 2;
        svg.rectangle(new Box(left, top, width, plot.bottom() - top), cssClass);
      }
    }
  }

  void line(Svg svg, String cssClass) {
    ground(svg, scale.to());
    List<Point> points = new ArrayList<>();
    for (PastDay day : frame.past()) {
      points.add(new Point(frame.x(day.day()), scale.px(quantity.applyAsDouble(day))));
    }
    svg.openLine(points, cssClass);
  }

  /** Writes the last day's value to the right of the today line, where there is room. */
  void valueToday(Svg svg, String words) {
    double type = frame.format().typePx;
    double y = scale.px(quantity.applyAsDouble(frame.today()));
    double baseline = Math.min(plot.bottom() - 3, Math.max(plot.y() + type, y + 0.35 * type));
    Point beside = new Point(frame.x(frame.today().day()) + 6, baseline);
    Label label = frame.label(beside, Label.Align.START, "words", words);
    if (label.box().right() <= frame.format().widthPx) {
      svg.words(label);
    }
  }

  private void ground(Svg svg, double most) {
    double type = frame.format().typePx;
    frame.monthLines(svg, plot.y(), plot.bottom());
    svg.line(new Point(plot.x(), plot.bottom()), new Point(plot.right(), plot.bottom()), "ground");
    svg.line(new Point(plot.x(), plot.y()), new Point(plot.right(), plot.y()), "edge");
    Point above = new Point(plot.x(), plot.y() - 0.45 * type);
    svg.words(frame.label(above, Label.Align.START, "words", title));
    axis(svg, 0, "0");
    axis(svg, most, DisplayNumber.plain(most));
  }

  private void axis(Svg svg, double value, String words) {
    double lift = value == 0 ? 0 : 0.7;
    Point left = new Point(plot.x() - 6, scale.px(value) + lift * frame.format().typePx);
    svg.words(frame.label(left, Label.Align.END, "soft", words));
  }
}
