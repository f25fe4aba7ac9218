package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import leafturn.advice.season.PlanAim;
import leafturn.advice.season.Ranking;
import leafturn.advice.season.SeasonPlan;
import leafturn.quantity.DisplayNumber;
import leafturn.reports.UnitWords;
import leafturn.reports.plan.AimWords;

/**
 * The programmes of a plan as dots over two of its aims, those of the tables with their numbers.
 */
public final class TradeFigure {
  private static final double TYPE_PX = 14;
  private static final double LEFT_PX = 54;
  private static final double RIGHT_PX = 16;
  private static final double TOP_PX = 34;
  private static final double FOOT_PX = 52;
  private static final int STEPS = 5;
  private static final double DOT_PX = 3;
  private static final double MARK_PX = 6;

  private final SeasonPlan plan;
  private final Ranking ranking;
  private final AimWords words;

  /**
   * @param units of the reader
   */
  public TradeFigure(SeasonPlan plan, Ranking ranking, UnitWords units) {
    this.plan = plan;
    this.ranking = ranking;
    this.words = new AimWords(units, plan.basis().third());
  }

  /**
   * The figure as SVG.
   *
   * @param across the aim along it
   * @param up the aim up it
   * @param numbered programmes that bear their number, the most important first
   * @param wide true for a wide page
   */
  public String draw(PlanAim across, PlanAim up, Collection<Integer> numbered, boolean wide) {
    Box size = wide ? new Box(0, 0, 900, 440) : new Box(0, 0, 360, 380);
    Svg svg =
        Svg.labelled(
            size,
            wide ? "season-wide" : "season-narrow",
            "%d programmes, %s across and %s up; the tables hold the values of those numbered and of the unbeaten"
                .formatted(plan.programmes().size(), words.measure(across), words.measure(up)));
    Scale x = scale(across, LEFT_PX, size.width() - RIGHT_PX);
    Scale y = scale(up, size.height() - FOOT_PX, TOP_PX);
    acrossAxis(svg, x, size, across);
    upAxis(svg, y, size, up);
    dots(svg, across, up, x, y);
    marks(svg, size, numbered, number -> place(number, across, up, x, y));
    return svg.close();
  }

  /** Where a programme lies in the drawing. */
  private interface Places {
    Point of(int number);
  }

  private Point place(int number, PlanAim across, PlanAim up, Scale x, Scale y) {
    return new Point(x.px(value(across, number)), y.px(value(up, number)));
  }

  private double value(PlanAim aim, int number) {
    return words.value(aim, plan.programmes().get(number).outcome());
  }

  private Scale scale(PlanAim aim, double fromPx, double toPx) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int number = 0; number < plan.programmes().size(); number++) {
      low = Math.min(low, value(aim, number));
      high = Math.max(high, value(aim, number));
    }
    double step = step(low, high);
    double from = Math.floor(low / step) * step;
    return new Scale(from, Math.max(from + step, Math.ceil(high / step) * step), fromPx, toPx);
  }

  private static double step(double low, double high) {
    return high > low ? RoundSteps.atMost((high - low) / STEPS * 1.6) : 1;
  }

  private static List<Double> ticks(Scale scale) {
    double step = step(scale.from(), scale.to());
    List<Double> ticks = new ArrayList<>();
    for (double tick = Math.ceil(scale.from() / step - 1e-9) * step;
        tick <= scale.to() + 1e-9;
        tick += step) {
      ticks.add(tick);
    }
    return ticks;
  }

  private static String tickWords(double tick, Scale scale) {
    double step = step(scale.from(), scale.to());
    int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    return DisplayNumber.decimals(tick, decimals);
  }

  private void acrossAxis(Svg svg, Scale x, Box size, PlanAim aim) {
    double foot = size.height() - FOOT_PX;
    for (double tick : ticks(x)) {
      svg.line(new Point(x.px(tick), TOP_PX), new Point(x.px(tick), foot), "edge");
      svg.words(
          new Label(
              new Point(x.px(tick), foot + 1.4 * TYPE_PX),
              Label.Align.MIDDLE,
              TYPE_PX,
              "soft",
              tickWords(tick, x)));
    }
    svg.line(new Point(LEFT_PX, foot), new Point(size.width() - RIGHT_PX, foot), "ground");
    svg.words(
        new Label(
            new Point(size.width() - RIGHT_PX, size.height() - 8),
            Label.Align.END,
            TYPE_PX,
            "soft",
            words.measure(aim)));
  }

  private void upAxis(Svg svg, Scale y, Box size, PlanAim aim) {
    for (double tick : ticks(y)) {
      svg.line(
          new Point(LEFT_PX, y.px(tick)), new Point(size.width() - RIGHT_PX, y.px(tick)), "edge");
      svg.words(
          new Label(
              new Point(LEFT_PX - 8, y.px(tick) + 0.35 * TYPE_PX),
              Label.Align.END,
              TYPE_PX,
              "soft",
              tickWords(tick, y)));
    }
    svg.words(
        new Label(new Point(2, TYPE_PX), Label.Align.START, TYPE_PX, "soft", words.measure(aim)));
  }

  private void dots(Svg svg, PlanAim across, PlanAim up, Scale x, Scale y) {
    for (boolean unbeaten : new boolean[] {false, true}) {
      for (Ranking.Place each : ranking.places()) {
        if (each.unbeaten() == unbeaten) {
          svg.circle(
              place(each.number(), across, up, x, y),
              DOT_PX,
              unbeaten ? "dot-unbeaten" : "dot-beaten");
        }
      }
    }
  }

  private void marks(Svg svg, Box size, Collection<Integer> numbered, Places places) {
    LabelPlaces labels = new LabelPlaces(size);
    for (int number : numbered) {
      Point at = places.of(number);
      labels.keepFree(new Box(at.x() - MARK_PX, at.y() - MARK_PX, 2 * MARK_PX, 2 * MARK_PX));
    }
    for (int number : numbered) {
      Point at = places.of(number);
      if (number == 0) {
        svg.rectangle(
            new Box(at.x() - MARK_PX, at.y() - MARK_PX, 2 * MARK_PX, 2 * MARK_PX), "dot-now");
      } else {
        svg.circle(at, MARK_PX, number == ranking.best() ? "dot-best" : "dot-shown");
      }
      String said = number == 0 ? "now" : Integer.toString(number);
      Label label = new Label(at, Label.Align.START, TYPE_PX, "strong ringed", said);
      labels.place(label, around(at, label.box().width())).ifPresent(svg::words);
    }
  }

  private static List<Point> around(Point at, double width) {
    double middle = at.y() + 0.35 * TYPE_PX;
    return List.of(
        new Point(at.x() + MARK_PX + 4, middle),
        new Point(at.x() - MARK_PX - width, middle),
        new Point(at.x() - width / 2, at.y() - MARK_PX - 4),
        new Point(at.x() - width / 2, at.y() + MARK_PX + TYPE_PX),
        new Point(at.x() + MARK_PX + 4, middle - TYPE_PX),
        new Point(at.x() + MARK_PX + 4, middle + TYPE_PX),
        new Point(at.x() + 3 * MARK_PX, middle - 2 * TYPE_PX),
        new Point(at.x() - 3 * MARK_PX - width, middle + 2 * TYPE_PX));
  }
}
