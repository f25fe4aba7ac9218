package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leafturn.advice.call.DryHours.Day;
import leafturn.advice.call.DryHours.Hour;
import leafturn.model.weather.hourly.GrassDay.Span;
import leafturn.quantity.ClockHour;
import leafturn.quantity.Units;

/**
 * One day of the hours figure: a column an hour, filled from below by the share of the weathers in
 * which it is fit, then by what keeps it from being fit. Each layer is named where it is thickest.
 */
final class HoursPanel {
  private static final int HOURS = 24;
  private static final int NAMED_EVERY = 6;
  private static final double SPAN_PX = 5;

  /** Share that no one would see. */
  private static final double INVISIBLE = 0.004;

  private record Layer(String name, String cssClass, ToDoubleFunction<Hour> share) {}

  private static final List<Layer> LAYERS =
      List.of(
          new Layer("dry", "hour-fit", Hour::fit),
          new Layer("frost", "hour-frost", HoursPanel::dryButFrozen),
          new Layer("dew", "hour-dew", Hour::dew),
          new Layer("sprinklers", "hour-watering", Hour::watering),
          new Layer("rain", "hour-rain", Hour::rain));

  private final Box plot;
  private final double type;
  private final Units units;
  private final double least;
  private final Scale across;
  private final Scale up;
  private final List<Label> placed = new ArrayList<>();

  HoursPanel(Box plot, double type, Units units, double least) {
    this.plot = plot;
    this.type = type;
    this.units = units;
    this.least = least;
    this.across = new Scale(0, HOURS, plot.x(), plot.right());
    this.up = new Scale(0, 1, plot.bottom(), plot.y());
  }

  private static double dryButFrozen(Hour hour) {
    return Math.max(0, 1 - hour.fit() - hour.dew() - hour.rain() - hour.watering());
  }

  void draw(Svg svg, String title, Day day) {
    double[] floor = new double[HOURS];
    for (Layer layer : LAYERS) {
      draw(svg, layer, day.hours(), floor);
    }
    frame(svg, title, day);
    placed.forEach(svg::words);
  }

  /** Adds a layer on top of those below it and notes its name where it is thickest. */
  private void draw(Svg svg, Layer layer, List<Hour> hours, double[] floor) {
    double[] thick = new double[HOURS];
    for (int hour = 0; hour < HOURS; hour++) {
      thick[hour] = layer.share().applyAsDouble(hours.get(hour));
    }
    for (int hour = 0; hour < HOURS; ) {
      int end = hour + 1;
      while (end < HOURS && alike(thick, hour, end) && alike(floor, hour, end)) {
        end++;
      }
      if (thick[hour] > INVISIBLE) {
        double top = up.px(floor[hour] + thick[hour]);
        double left = across.px(hour);
        svg.rectangle(
            new Box(left, top, across.px(end) - left, up.px(floor[hour]) - top), layer.cssClass());
      }
      hour = end;
    }
    name(layer, thick, floor);
    for (int hour = 0; hour < HOURS; hour++) {
      floor[hour] += thick[hour];
    }
  }

  private static boolean alike(double[] values, int one, int other) {
    return Math.abs(values[one] - values[other]) < INVISIBLE;
  }

  /** Names a layer in the middle of the largest rectangle within it that holds the word. */
  private void name(Layer layer, double[] thick, double[] floor) {
    double high = 1.1 * type / plot.height();
    double most = 0;
    Label best = null;
    for (int from = 0; from < HOURS; from++) {
      double low = 0;
      double top = 1;
      for (int to = from; to < HOURS; to++) {
        low = Math.max(low, floor[to]);
        top = Math.min(top, floor[to] + thick[to]);
        if (top - low < high) {
          break;
        }
        Point at =
            new Point(across.px((from + to + 1) / 2.0), up.px((low + top) / 2) + 0.35 * type);
        Label label = new Label(at, Label.Align.MIDDLE, type, "words", layer.name());
        boolean fits = label.box().width() <= across.px(to + 1) - across.px(from);
        double room = (to + 1 - from) * (top - low);
        if (room > most && fits && isFree(label)) {
          most = room;
          best = label;
        }
      }
    }
    if (best != null) {
      placed.add(best);
    }
  }

  private boolean isFree(Label label) {
    return label.box().inside(plot)
        && placed.stream().noneMatch(other -> other.box().overlaps(label.box()));
  }

  private void frame(Svg svg, String title, Day day) {
    svg.line(new Point(plot.x(), plot.y()), new Point(plot.right(), plot.y()), "edge");
    double limit = up.px(least);
    svg.line(new Point(plot.x(), limit), new Point(plot.right(), limit), "cut-line");
    svg.line(new Point(plot.x(), plot.bottom()), new Point(plot.right(), plot.bottom()), "edge");
    svg.line(sun(day.sun().riseHour()), sun(day.sun().setHour()), "ground");
    for (Span span : day.fit()) {
      double left = across.px(span.from());
      svg.rectangle(
          new Box(left, plot.bottom() + 2, across.px(span.to()) - left, SPAN_PX), "hour-span");
    }
    words(svg, new Point(plot.x(), plot.y() - 0.5 * type), Label.Align.START, "strong", title);
    axis(svg, limit, Math.round(100 * least) + " %");
    axis(svg, plot.bottom(), "0");
    for (int hour = 0; hour <= HOURS; hour += NAMED_EVERY) {
      Label.Align align =
          hour == 0 ? Label.Align.START : hour == HOURS ? Label.Align.END : Label.Align.MIDDLE;
      Point at = new Point(across.px(hour), plot.bottom() + SPAN_PX + 1.35 * type);
      words(svg, at, align, "soft", ClockHour.shown(hour, units));
    }
  }

  private Point sun(double hour) {
    return new Point(across.px(Math.max(0, Math.min(HOURS, hour))), plot.bottom());
  }

  private void axis(Svg svg, double y, String words) {
    words(svg, new Point(plot.x() - 6, y + 0.35 * type), Label.Align.END, "soft", words);
  }

  private void words(Svg svg, Point at, Label.Align align, String cssClass, String words) {
    svg.words(new Label(at, align, type, cssClass, words));
  }
}
