package leafturn.reports.figure;

import java.util.function.ToDoubleFunction;
import leafturn.advice.call.Call;
import leafturn.advice.call.Outlook.PastDay;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import leafturn.reports.DayWords;
import leafturn.reports.QuantityWords;
import leafturn.reports.UnitWords;

/**
 * The season so far and to come in one figure: grass height with its mowings, rain, water in the
 * root zone and growth over the same days.
 */
public final class SeasonFigure {
  private static final double TOP_PX = 24;
  private static final double GAP_PX = 12;

  private SeasonFigure() {}

  /**
   * The figure as SVG.
   *
   * @throws IllegalArgumentException if the call's outlook holds no day so far
   */
  public static String draw(Call call, SeasonFormat format) {
    SeasonFrame frame = SeasonFrame.of(call, format);
    double heightBottom = TOP_PX + format.heightPanelPx;
    UnitWords units = new UnitWords(call.units());
    SmallPanel rain =
        panel(
            frame,
            "Rain, %s a day".formatted(units.heightUnit()),
            rain(call),
            heightBottom + GAP_PX);
    SmallPanel water =
        new SmallPanel(
            frame, waterTitle(format), SeasonFigure::waterPercent, rain.bottom() + GAP_PX, 100);
    SmallPanel growth =
        panel(frame, growthTitle(format, units), growth(call), water.bottom() + GAP_PX);
    double bottom = growth.bottom();
    double tall = Math.ceil(bottom + 1.7 * format.typePx);
    Svg svg = Svg.labelled(new Box(0, 0, format.widthPx, tall), format.cssClass, label(call));
    svg.data("first-day-x", format.leftPx)
        .data("day-width", frame.dayWidthPx())
        .data("days", frame.past().size());
    new HeightPanel(frame, call, TOP_PX).draw(svg);
    rain.bars(svg, "rain");
    water.line(svg, "water-line");
    water.valueToday(svg, QuantityWords.percent(frame.today().soilWaterFraction()));
    growth.bars(svg, "growth");
    double today = frame.x(frame.today().day());
    svg.line(new Point(today, 4), new Point(today, bottom), "today-line");
    frame.monthNames(svg, bottom + 1.25 * format.typePx);
    return svg.close();
  }

  private static SmallPanel panel(
      SeasonFrame frame, String title, ToDoubleFunction<PastDay> quantity, double top) {
    double most = frame.past().stream().mapToDouble(quantity).max().orElse(1);
    return new SmallPanel(frame, title, quantity, top, ceiling(most));
  }

  private static double waterPercent(PastDay day) {
    return 100 * day.soilWaterFraction();
  }

  private static String waterTitle(SeasonFormat format) {
    return format.isWide()
        ? "Water in the root zone, % of what it can hold"
        : "Water in the root zone, % of full";
  }

  private static ToDoubleFunction<PastDay> rain(Call call) {
    return day -> Measure.WATER.shown(day.rainMm(), call.units());
  }

  private static ToDoubleFunction<PastDay> growth(Call call) {
    return day -> Measure.MASS_PER_AREA.shown(day.growthGPerM2(), call.units());
  }

  /** The panel's upper edge: the next whole number, or the next tenth of a quantity below one. */
  private static double ceiling(double most) {
    return most > 1 || most <= 0 ? Math.max(1, Math.ceil(most)) : Math.ceil(10 * most) / 10;
  }

  private static String growthTitle(SeasonFormat format, UnitWords units) {
    return units.units() == Units.US
        ? "Growth, lb dry per 1000 ft² a day"
        : format.isWide() ? "Growth, g dry matter per m² a day" : "Growth, g dry per m² a day";
  }

  private static String label(Call call) {
    PastDay first = call.outlook().past().get(0);
    return "Grass height, rain, water in the root zone and growth from "
        + DayWords.date(first.day())
        + " to "
        + DayWords.date(call.on())
        + ", and the height to come if it is not mown; the same values are in the table below";
  }
}
