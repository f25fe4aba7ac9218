package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * The season of every plot by arm, the plots of one unit joined by a line, and the mean of each
 * arm.
 *
 * @param title what the upright axis bears
 * @param label the figure in words
 * @param arms from left to right
 * @param units with a value for each arm, NaN where there is none
 * @param log whether values are natural logarithms
 */
public record TrialUnitsFigure(
    String title, String label, List<String> arms, List<Unit> units, boolean log) {
  private static final double NAMES_PX = 96;
  private static final double DOT_PX = 3;
  private static final double MEAN_PX = 6;
  private static final double INSET_PX = 46;

  /** A unit with the season of its plots, one for each arm. */
  public record Unit(String name, List<Double> values) {}

  /** The figure as SVG. */
  public String draw(TrialFormat format) {
    List<Double> all = units.stream().flatMap(unit -> unit.values.stream()).toList();
    TrialFrame frame = new TrialFrame(format, TrialAxis.over(all, log), NAMES_PX);
    Svg svg = Svg.labelled(format.size(), format.cssClass, label);
    frame.ground(svg, title, frame.plot().right());
    List<Double> xs = new ArrayList<>();
    for (int arm = 0; arm < arms.size(); arm++) {
      xs.add(x(frame, arm));
    }
    for (Unit unit : units) {
      unit(svg, frame, xs, unit);
    }
    means(svg, frame, xs);
    names(svg, frame, xs);
    frame.foot(svg, xs, arms, format.widthPx);
    return svg.close();
  }

  private double x(TrialFrame frame, int arm) {
    double left = frame.plot().x() + INSET_PX;
    double right = frame.plot().right() - 6;
    return arms.size() < 2 ? left : left + arm * (right - left) / (arms.size() - 1);
  }

  private static void unit(Svg svg, TrialFrame frame, List<Double> xs, Unit unit) {
    List<Point> line = new ArrayList<>();
    for (int arm = 0; arm < xs.size(); arm++) {
      if (Double.isFinite(unit.values.get(arm))) {
        line.add(new Point(xs.get(arm), frame.y(unit.values.get(arm))));
      }
    }
    if (line.size() > 1) {
      svg.openLine(line, "pair-line");
    }
    line.forEach(point -> svg.circle(point, DOT_PX, "pair-dot"));
  }

  private void means(Svg svg, TrialFrame frame, List<Double> xs) {
    List<Point> line = new ArrayList<>();
    for (int arm = 0; arm < xs.size(); arm++) {
      int own = arm;
      units.stream()
          .mapToDouble(unit -> unit.values.get(own))
          .filter(Double::isFinite)
          .average()
          .ifPresent(mean -> line.add(new Point(xs.get(own), frame.y(mean))));
    }
    if (line.size() > 1) {
      svg.openLine(line, "pair-mean-line");
    }
    line.forEach(point -> svg.circle(point, MEAN_PX, "pair-mean"));
    if (!line.isEmpty()) {
      Point first = line.get(0);
      Point beside = new Point(first.x() - MEAN_PX - 5, first.y() + 0.35 * frame.format().typePx);
      svg.words(frame.label(beside, Label.Align.END, "strong", "mean"));
    }
  }

  /** Units by name to the right of the last arm, those that find room. */
  private void names(Svg svg, TrialFrame frame, List<Double> xs) {
    LabelPlaces places = new LabelPlaces(frame.format().size());
    int last = arms.size() - 1;
    double x = xs.get(last) + MEAN_PX + 6;
    double type = frame.format().typePx;
    for (Unit unit : units) {
      double value = unit.values.get(last);
      if (Double.isFinite(value)) {
        double middle = frame.y(value) + 0.35 * type;
        Point at = new Point(x, middle);
        Label label = frame.label(at, Label.Align.START, "soft", unit.name);
        places
            .place(
                label,
                List.of(at, new Point(x, middle - 0.5 * type), new Point(x, middle + 0.5 * type)))
            .ifPresent(svg::words);
      }
    }
  }
}
