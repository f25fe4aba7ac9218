package leafturn.reports.figure;

import java.util.List;
import leafturn.advice.call.DryHours;
import leafturn.quantity.Units;
import leafturn.reports.DayWords;

/**
 * Today and tomorrow by the hour: in what share of the possible weathers the grass is fit for
 * mowing, and what keeps it from being fit in the others.
 */
public final class HoursFigure {
  private static final double PANEL_PX = 96;
  private static final double GAP_PX = 36;
  private static final double RIGHT_PX = 8;
  private static final int HOURS = 24;

  private HoursFigure() {}

  /** The figure as SVG. */
  public static String draw(DryHours hours, Units units, HoursFormat format) {
    int columns = Math.min(format.columns, hours.days().size());
    int rows = (hours.days().size() + columns - 1) / columns;
    double above = 1.8 * format.typePx;
    double below = 2.2 * format.typePx;
    double rowHeight = above + PANEL_PX + below;
    double width = (format.widthPx - (columns - 1) * GAP_PX) / columns;
    double tall = Math.ceil(rows * rowHeight);
    Svg svg = Svg.labelled(new Box(0, 0, format.widthPx, tall), format.cssClass, label(hours));
    svg.data("hour-width", (width - format.leftPx - RIGHT_PX) / HOURS);
    svg.data("panel-height", PANEL_PX);
    for (int day = 0; day < hours.days().size(); day++) {
      double left = day % columns * (width + GAP_PX);
      double top = Math.floor((double) day / columns) * rowHeight;
      Box plot =
          new Box(left + format.leftPx, top + above, width - format.leftPx - RIGHT_PX, PANEL_PX);
      String title = day == 0 ? "Today" : "Tomorrow";
      new HoursPanel(plot, format.typePx, units, hours.leastFraction())
          .draw(svg, title, hours.days().get(day));
      svg.data("left" + day, plot.x()).data("top" + day, plot.y());
    }
    return svg.close();
  }

  private static String label(DryHours hours) {
    List<DryHours.Day> days = hours.days();
    StringBuilder label = new StringBuilder("Hours in which the grass is fit for mowing. ");
    for (DryHours.Day day : days) {
      label.append(DayWords.date(day.date())).append(": ").append(day.words()).append(". ");
    }
    return label.append("The same values are in the table below").toString();
  }
}
