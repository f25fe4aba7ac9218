package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The difference of two arms at each date and over the season, with intervals and the margin that
 * matters; on the log scale as ratios.
 *
 * @param title what the upright axis bears
 * @param label the figure in words
 * @param dates differences by date; may be none
 * @param season the season's difference; null where there is none
 * @param margin on the scale of the analysis; NaN where none was fixed
 * @param log whether values are natural logarithms of ratios
 */
public record TrialDatesFigure(
    String title,
    String label,
    List<Mark> dates,
    @Nullable Mark season,
    double margin,
    boolean log) {
  private static final double SEASON_PX = 84;

  /** Between the last date and the word of the season, which is no date. */
  private static final double SEASON_APART_PX = 16;

  private static final double DOT_PX = 4.5;
  private static final double CAP_PX = 5;
  private static final double INSET_PX = 36;
  private static final int LABEL_STEPS = 12;

  /**
   * A value with its interval.
   *
   * @param words under it
   * @param day as a number of days
   * @param low NaN where there is no interval
   */
  public record Mark(String words, double day, double value, double low, double high) {}

  public TrialDatesFigure {
    dates = dates.stream().filter(mark -> Double.isFinite(mark.value)).toList();
  }

  /** The figure as SVG. */
  public String draw(TrialFormat format) {
    TrialFrame frame = new TrialFrame(format, axis(), season == null ? 10 : SEASON_PX);
    LabelPlaces places = new LabelPlaces(format.size());
    Svg svg = Svg.labelled(format.size(), format.cssClass, label);
    double right = format.widthPx - 6;
    marginBand(svg, frame, right);
    frame.ground(svg, title, right);
    marginLines(svg, frame, right);
    double zero = frame.y(0);
    svg.line(new Point(frame.plot().x(), zero), new Point(right, zero), "ground");
    List<Double> xs = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (Mark mark : dates) {
      double x = x(frame, mark);
      interval(svg, frame, x, mark, "");
      keepFree(places, frame, x, mark);
      xs.add(x);
      words.add(mark.words);
    }
    double footPx = format.widthPx;
    if (season != null) {
      double x = format.widthPx - SEASON_PX / 2;
      double left = format.widthPx - SEASON_PX + 4;
      if (!dates.isEmpty()) {
        svg.line(
            new Point(left, frame.plot().y()), new Point(left, frame.plot().bottom()), "month");
      }
      interval(svg, frame, x, season, "-season");
      keepFree(places, frame, x, season);
      footPx = frame.foot(svg, List.of(x), List.of(season.words), footPx) - SEASON_APART_PX;
    }
    marginLabel(svg, frame, places, right);
    frame.foot(svg, xs, words, footPx);
    return svg.close();
  }

  private TrialAxis axis() {
    List<Double> values = new ArrayList<>(List.of(0.0));
    List<Mark> all = new ArrayList<>(dates);
    if (season != null) {
      all.add(season);
    }
    for (Mark mark : all) {
      values.add(mark.value);
      values.add(mark.low);
      values.add(mark.high);
    }
    if (margin > 0) {
      values.add(margin);
      values.add(-margin);
    }
    return TrialAxis.over(values, log);
  }

  private double x(TrialFrame frame, Mark mark) {
    double first = dates.get(0).day;
    double last = dates.get(dates.size() - 1).day;
    double left = frame.plot().x() + INSET_PX;
    double right = frame.plot().right() - INSET_PX;
    return last > first ? new Scale(first, last, left, right).px(mark.day) : (left + right) / 2;
  }

  private void marginBand(Svg svg, TrialFrame frame, double right) {
    if (!(margin > 0)) {
      return;
    }
    double top = frame.y(margin);
    double bottom = frame.y(-margin);
    double left = frame.plot().x();
    svg.rectangle(new Box(left, top, right - left, bottom - top), "margin-band");
  }

  private void marginLines(Svg svg, TrialFrame frame, double right) {
    if (margin > 0) {
      for (double y : new double[] {frame.y(margin), frame.y(-margin)}) {
        svg.line(new Point(frame.plot().x(), y), new Point(right, y), "margin-line");
      }
    }
  }

  private static void keepFree(LabelPlaces places, TrialFrame frame, double x, Mark mark) {
    double top = frame.y(Double.isFinite(mark.high) ? mark.high : mark.value) - CAP_PX;
    double bottom = frame.y(Double.isFinite(mark.low) ? mark.low : mark.value) + CAP_PX;
    places.keepFree(new Box(x - CAP_PX, top, 2 * CAP_PX, bottom - top));
  }

  /** The word beside one of the margin's lines, where no interval runs through it. */
  private void marginLabel(Svg svg, TrialFrame frame, LabelPlaces places, double right) {
    if (!(margin > 0)) {
      return;
    }
    List<Point> candidates = new ArrayList<>();
    double left = frame.plot().x();
    for (double y : new double[] {frame.y(margin) - 4, frame.y(-margin) - 4}) {
      for (int step = 0; step < LABEL_STEPS; step++) {
        candidates.add(new Point(left + 4 + step * (right - left - 50) / LABEL_STEPS, y));
      }
    }
    Label label = frame.label(candidates.get(0), Label.Align.START, "soft", "margin");
    places.place(label, candidates).ifPresent(svg::words);
  }

  private static void interval(Svg svg, TrialFrame frame, double x, Mark mark, String kind) {
    if (Double.isFinite(mark.low) && Double.isFinite(mark.high)) {
      double low = frame.y(mark.low);
      double high = frame.y(mark.high);
      svg.strokes(
          List.of(
              List.of(new Point(x, low), new Point(x, high)),
              List.of(new Point(x - CAP_PX, low), new Point(x + CAP_PX, low)),
              List.of(new Point(x - CAP_PX, high), new Point(x + CAP_PX, high))),
          "interval" + kind);
    }
    svg.circle(new Point(x, frame.y(mark.value)), DOT_PX, "estimate" + kind);
  }
}
