package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;

/** Power over the number of units, with the wanted power across; a key below names the curves. */
public final class PowerFigure {
  private static final double TYPE_PX = 14;
  private static final double LEFT_PX = 54;
  private static final double RIGHT_PX = 16;
  private static final double TOP_PX = 34;
  private static final double FOOT_PX = 32;
  private static final double KEY_PX = 20;
  private static final double SAMPLE_PX = 30;
  private static final int UNITS_APART = 10;
  private static final int MOST_UNITS = 40;
  private static final double[] SHARES = {0, 0.2, 0.4, 0.6, 0.8, 1};

  private final String unit;
  private final double wanted;
  private final List<Line> lines;

  /**
   * One curve.
   *
   * @param words what it is the power of
   * @param units rising, at most 40
   * @param powers at each of them, 0 to 1
   */
  public record Line(String words, List<Integer> units, List<Double> powers) {
    public Line {
      units = List.copyOf(units);
      powers = List.copyOf(powers);
    }
  }

  /**
   * @param unit what there can be more of, in the plural
   * @param wanted power that is drawn across
   * @param lines one or two curves
   */
  public PowerFigure(String unit, double wanted, List<Line> lines) {
    this.unit = unit;
    this.wanted = wanted;
    this.lines = List.copyOf(lines);
  }

  /**
   * The figure as SVG.
   *
   * @param wide true for a wide page
   */
  public String draw(boolean wide) {
    double footPx = FOOT_PX + KEY_PX * Math.max(1, lines.size());
    Box size = new Box(0, 0, wide ? 900 : 360, (wide ? 308 : 288) + footPx);
    Svg svg =
        Svg.labelled(
            size,
            wide ? "season-wide" : "season-narrow",
            "Chance (power) over the number of %s; the table holds the values".formatted(unit));
    double right = size.width() - RIGHT_PX;
    Scale x = new Scale(0, MOST_UNITS, LEFT_PX, right);
    double foot = size.height() - footPx;
    Scale y = new Scale(0, 1, foot, TOP_PX);
    axes(svg, new Box(LEFT_PX, TOP_PX, right - LEFT_PX, foot - TOP_PX), x, y);
    svg.line(new Point(LEFT_PX, y.px(wanted)), new Point(right, y.px(wanted)), "cut-line");
    for (int i = 0; i < lines.size(); i++) {
      String cssClass = i == 0 ? "grass-line" : "second-line";
      svg.openLine(points(lines.get(i), x, y), cssClass);
      key(svg, foot + FOOT_PX + KEY_PX * (i + 0.6), cssClass, lines.get(i).words());
    }
    return svg.close();
  }

  /** A piece of a curve and what it is the chance of. */
  private static void key(Svg svg, double baseline, String cssClass, String words) {
    double middle = baseline - 0.35 * TYPE_PX;
    double end = LEFT_PX + SAMPLE_PX;
    svg.openLine(List.of(new Point(LEFT_PX, middle), new Point(end, middle)), cssClass);
    svg.words(new Label(new Point(end + 8, baseline), Label.Align.START, TYPE_PX, "strong", words));
  }

  private static List<Point> points(Line line, Scale x, Scale y) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < line.units().size(); i++) {
      points.add(new Point(x.px(line.units().get(i)), y.px(line.powers().get(i))));
    }
    return points;
  }

  private void axes(Svg svg, Box plot, Scale x, Scale y) {
    double foot = plot.bottom();
    double right = plot.right();
    for (int units = 0; units <= MOST_UNITS; units += UNITS_APART) {
      svg.line(new Point(x.px(units), TOP_PX), new Point(x.px(units), foot), "edge");
      svg.words(
          soft(
              new Point(x.px(units), foot + 1.4 * TYPE_PX),
              Label.Align.MIDDLE,
              Integer.toString(units)));
    }
    for (double share : SHARES) {
      svg.line(new Point(LEFT_PX, y.px(share)), new Point(right, y.px(share)), "edge");
      svg.words(
          soft(
              new Point(LEFT_PX - 8, y.px(share) + 0.35 * TYPE_PX),
              Label.Align.END,
              Math.round(100 * share) + " %"));
    }
    svg.line(new Point(LEFT_PX, foot), new Point(right, foot), "ground");
    svg.words(soft(new Point(right, foot + FOOT_PX + 0.6 * KEY_PX), Label.Align.END, unit));
    svg.words(soft(new Point(2, TYPE_PX), Label.Align.START, "chance (power)"));
  }

  private static Label soft(Point at, Label.Align align, String words) {
    return new Label(at, align, TYPE_PX, "soft", words);
  }
}
