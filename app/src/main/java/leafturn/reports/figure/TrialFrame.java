package leafturn.reports.figure;

import java.util.List;

/** The plot, axes and dates that the figures of a trial share. */
final class TrialFrame {
  private static final double FOOT_LINES = 1.9;
  private static final double HEAD_LINES = 1.9;

  private final TrialFormat format;
  private final TrialAxis axis;
  private final Box plot;
  private final Scale up;

  /**
   * @param rightPx room kept to the right of the plot
   */
  TrialFrame(TrialFormat format, TrialAxis axis, double rightPx) {
    this.format = format;
    this.axis = axis;
    double top = HEAD_LINES * format.typePx;
    double bottom = format.heightPx - FOOT_LINES * format.typePx;
    this.plot = new Box(format.leftPx, top, format.widthPx - format.leftPx - rightPx, bottom - top);
    this.up = axis.scale(plot.bottom(), plot.y());
  }

  TrialFormat format() {
    return format;
  }

  Box plot() {
    return plot;
  }

  double y(double value) {
    return up.px(value);
  }

  boolean holds(double value) {
    return value >= axis.low() && value <= axis.high();
  }

  /** Grid, values at the left and what they are of. */
  void ground(Svg svg, String title, double rightPx) {
    for (TrialAxis.Tick tick : axis.ticks()) {
      double y = y(tick.value());
      svg.line(new Point(plot.x(), y), new Point(rightPx, y), "edge");
      Point place = new Point(plot.x() - 7, y + 0.35 * format.typePx);
      svg.words(label(place, Label.Align.END, "soft", tick.words()));
    }
    svg.words(label(new Point(0, format.typePx), Label.Align.START, "soft", title));
  }

  /**
   * Words under the plot, the last first, left out where they would run into each other.
   *
   * @param xs places of the words, px
   */
  void foot(Svg svg, List<Double> xs, List<String> words) {
    double taken = Double.POSITIVE_INFINITY;
    double baseline = plot.bottom() + 1.4 * format.typePx;
    for (int i = words.size() - 1; i >= 0; i--) {
      Point place = new Point(xs.get(i), baseline);
      Label label = label(place, Label.Align.MIDDLE, "soft", words.get(i));
      double over = Math.max(0, label.box().right() - format.widthPx);
      Label inside = label.at(new Point(place.x() - over, baseline));
      if (inside.box().right() < taken - 6) {
        svg.words(inside);
        taken = inside.box().x();
      }
    }
  }

  Label label(Point place, Label.Align align, String cssClass, String words) {
    return new Label(place, align, format.typePx, cssClass, words);
  }
}
