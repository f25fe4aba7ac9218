package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;

/** The plot, axes and dates that the figures of a trial share. */
final class TrialFrame {
  private static final double FOOT_LINES = 1.9;
  private static final double HEAD_LINES = 1.9;

  /** Between two words under the plot. */
  static final double APART_PX = 6;

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
   * Words under the plot: always the last and, where two find room, the first; those between are
   * left out where they would run into others.
   *
   * @param xs places of the words, px
   * @param rightPx where they end at the latest
   * @return where the words begin, px
   */
  double foot(Svg svg, List<Double> xs, List<String> words, double rightPx) {
    int last = words.size() - 1;
    if (last < 0) {
      return rightPx;
    }
    List<Label> drawn = new ArrayList<>(List.of(foot(xs.get(last), words.get(last), rightPx)));
    Label first = foot(xs.get(0), words.get(0), rightPx);
    if (last > 0 && isBefore(first, drawn.get(0))) {
      drawn.add(0, first);
    }
    for (int i = last - 1; i > 0 && drawn.size() > 1; i--) {
      Label between = foot(xs.get(i), words.get(i), rightPx);
      if (isBefore(first, between) && isBefore(between, drawn.get(1))) {
        drawn.add(1, between);
      }
    }
    drawn.forEach(svg::words);
    return drawn.get(0).box().x();
  }

  private static boolean isBefore(Label one, Label other) {
    return one.box().right() < other.box().x() - APART_PX;
  }

  /** A word under the plot, moved so that it stays inside the drawing. */
  private Label foot(double x, String words, double rightPx) {
    double baseline = plot.bottom() + 1.4 * format.typePx;
    Label label = label(new Point(x, baseline), Label.Align.MIDDLE, "soft", words);
    double over = Math.max(0, label.box().right() - rightPx);
    double under = Math.max(0, -(label.box().x() - over));
    return label.at(new Point(x - over + under, baseline));
  }

  Label label(Point place, Label.Align align, String cssClass, String words) {
    return new Label(place, align, format.typePx, cssClass, words);
  }
}
