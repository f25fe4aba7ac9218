package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;

/** Power over the number of units: curves labelled directly, with the wanted power across. */
public final class PowerFigure {
  private static final double TYPE_PX = 14;
  private static final double LEFT_PX = 54;
  private static final double RIGHT_PX = 16;
  private static final double TOP_PX = 34;
  private static final double FOOT_PX = 52;
  private static final double MARK_PX = 6;

  /** Words stand best about half way up. */
  private static final double MIDDLE_PX = 160;

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
    Box size = wide ? new Box(0, 0, 900, 360) : new Box(0, 0, 360, 340);
    Svg svg =
        Svg.labelled(
            size,
            wide ? "season-wide" : "season-narrow",
            "Chance (power) over the number of %s; the table holds the values".formatted(unit));
    Scale x = new Scale(0, MOST_UNITS, LEFT_PX, size.width() - RIGHT_PX);
    Scale y = new Scale(0, 1, size.height() - FOOT_PX, TOP_PX);
    axes(svg, size, x, y);
    svg.line(
        new Point(LEFT_PX, y.px(wanted)),
        new Point(size.width() - RIGHT_PX, y.px(wanted)),
        "cut-line");
    LabelPlaces labels = new LabelPlaces(size);
    for (int i = 0; i < lines.size(); i++) {
      List<Point> points = points(lines.get(i), x, y);
      svg.openLine(points, i == 0 ? "grass-line" : "second-line");
      points.forEach(
          at ->
              labels.keepFree(
                  new Box(at.x() - MARK_PX, at.y() - MARK_PX, 2 * MARK_PX, 2 * MARK_PX)));
    }
    for (int i = 0; i < lines.size(); i++) {
      label(svg, labels, lines.get(i).words(), points(lines.get(i), x, y), isUpper(i));
    }
    return svg.close();
  }

  private static List<Point> points(Line line, Scale x, Scale y) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < line.units().size(); i++) {
      points.add(new Point(x.px(line.units().get(i)), y.px(line.powers().get(i))));
    }
    return points;
  }

  private void axes(Svg svg, Box size, Scale x, Scale y) {
    double foot = size.height() - FOOT_PX;
    for (int units = 0; units <= MOST_UNITS; units += UNITS_APART) {
      svg.line(new Point(x.px(units), TOP_PX), new Point(x.px(units), foot), "edge");
      svg.words(
          soft(
              new Point(x.px(units), foot + 1.4 * TYPE_PX),
              Label.Align.MIDDLE,
              Integer.toString(units)));
    }
    for (double share : SHARES) {
      svg.line(
          new Point(LEFT_PX, y.px(share)), new Point(size.width() - RIGHT_PX, y.px(share)), "edge");
      svg.words(
          soft(
              new Point(LEFT_PX - 8, y.px(share) + 0.35 * TYPE_PX),
              Label.Align.END,
              Math.round(100 * share) + " %"));
    }
    svg.line(new Point(LEFT_PX, foot), new Point(size.width() - RIGHT_PX, foot), "ground");
    svg.words(soft(new Point(size.width() - RIGHT_PX, size.height() - 8), Label.Align.END, unit));
    svg.words(soft(new Point(2, TYPE_PX), Label.Align.START, "chance (power)"));
  }

  private static Label soft(Point at, Label.Align align, String words) {
    return new Label(at, align, TYPE_PX, "soft", words);
  }

  /** Whether a curve lies above the other where they rise. */
  private boolean isUpper(int number) {
    int early = lines.get(number).powers().size() / 3;
    return lines.stream()
        .allMatch(other -> other.powers().get(early) <= lines.get(number).powers().get(early));
  }

  /** Beside the curve: the upper one's words above it to the left, the lower one's below. */
  private static void label(
      Svg svg, LabelPlaces labels, String words, List<Point> points, boolean above) {
    Label label = new Label(points.get(0), Label.Align.START, TYPE_PX, "strong", words);
    double width = label.box().width();
    List<Point> places = new ArrayList<>();
    for (Point at : points) {
      places.add(
          above
              ? new Point(at.x() - 10 - width, at.y() - 0.6 * TYPE_PX)
              : new Point(at.x() + 12, at.y() + 1.2 * TYPE_PX));
    }
    places.sort(
        (one, other) ->
            Double.compare(Math.abs(one.y() - MIDDLE_PX), Math.abs(other.y() - MIDDLE_PX)));
    places.removeIf(place -> place.x() < LEFT_PX);
    labels.place(label, places).ifPresent(svg::words);
  }
}
