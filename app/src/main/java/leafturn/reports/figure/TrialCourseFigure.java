package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The mean of each arm from date to date, told apart by line and mark, without any test.
 *
 * @param title what the upright axis bears
 * @param label the figure in words
 * @param dates under the axis
 * @param days of the dates
 * @param courses one for each arm
 * @param log whether values are natural logarithms
 */
public record TrialCourseFigure(
    String title,
    String label,
    List<String> dates,
    double[] days,
    List<Course> courses,
    boolean log) {
  private static final double NAMES_PX = 92;
  private static final double INSET_PX = 18;
  private static final double MARK_PX = 4;
  private static final int KINDS = 4;

  /** An arm with its mean on each date, NaN where there is none. */
  public record Course(String arm, double[] values) {}

  /** The figure as SVG. */
  public String draw(TrialFormat format) {
    List<Double> all = new ArrayList<>();
    courses.forEach(course -> Arrays.stream(course.values).forEach(all::add));
    TrialFrame frame = new TrialFrame(format, TrialAxis.over(all, log), NAMES_PX);
    Svg svg = Svg.labelled(format.size(), format.cssClass, label);
    frame.ground(svg, title, frame.plot().right());
    List<Double> xs = new ArrayList<>();
    for (double day : days) {
      xs.add(x(frame, day));
    }
    LabelPlaces places = new LabelPlaces(format.size());
    for (int i = 0; i < courses.size(); i++) {
      course(svg, frame, xs, i, places);
    }
    frame.foot(svg, xs, dates, format.widthPx);
    return svg.close();
  }

  private double x(TrialFrame frame, double day) {
    double left = frame.plot().x() + INSET_PX;
    double right = frame.plot().right() - INSET_PX;
    double first = days[0];
    double last = days[days.length - 1];
    return last > first ? new Scale(first, last, left, right).px(day) : (left + right) / 2;
  }

  private void course(Svg svg, TrialFrame frame, List<Double> xs, int which, LabelPlaces places) {
    Course course = courses.get(which);
    List<Point> line = new ArrayList<>();
    for (int date = 0; date < days.length; date++) {
      if (Double.isFinite(course.values[date])) {
        line.add(new Point(xs.get(date), frame.y(course.values[date])));
      }
    }
    int kind = which % KINDS;
    if (line.size() > 1) {
      svg.openLine(line, "course-" + kind);
    }
    for (Point point : line) {
      if (kind % 2 == 0) {
        svg.circle(point, MARK_PX, "course-mark-" + kind);
      } else {
        Box mark = new Box(point.x() - MARK_PX, point.y() - MARK_PX, 2 * MARK_PX, 2 * MARK_PX);
        svg.rectangle(mark, "course-mark-" + kind);
      }
    }
    if (!line.isEmpty()) {
      Point end = line.get(line.size() - 1);
      double type = frame.format().typePx;
      double x = end.x() + MARK_PX + 6;
      double middle = end.y() + 0.35 * type;
      Label label = frame.label(end, Label.Align.START, "strong", course.arm);
      places
          .place(
              label,
              List.of(
                  new Point(x, middle),
                  new Point(x, middle - type),
                  new Point(x, middle + type),
                  new Point(x, middle - 2 * type),
                  new Point(x, middle + 2 * type)))
          .ifPresent(svg::words);
    }
  }
}
