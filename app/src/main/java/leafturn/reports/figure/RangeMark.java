package leafturn.reports.figure;

import java.util.List;
import leafturn.advice.call.Spread;

/**
 * A small mark for one spread: a bar from the 10th to the 90th percentile and a dot at the median,
 * on a track that is the same for every choice.
 *
 * @param most value at the right end of the track, above 0
 * @param limit value at which a tick stands, or NaN for none
 * @param cssClass the mark's colour class
 */
public record RangeMark(double most, double limit, String cssClass) {
  private static final Box SIZE = new Box(0, 0, 128, 14);
  private static final double EDGE = 5;
  private static final double MIDDLE = 7;

  /** A track long enough for every spread and the limit, with a tick at the limit. */
  public static RangeMark over(List<Spread> spreads, double limit, String cssClass) {
    double most = Double.isNaN(limit) ? 0 : 1.25 * limit;
    for (Spread spread : spreads) {
      most = Math.max(most, spread.high());
    }
    return new RangeMark(most > 0 ? most : 1, limit, cssClass);
  }

  /** The mark as SVG, hidden from screen readers because the words stand beside it. */
  public String draw(Spread spread) {
    Scale scale = new Scale(0, most, EDGE, SIZE.width() - EDGE);
    Svg svg = Svg.decorative(SIZE, "range-mark " + cssClass);
    svg.line(at(0, scale), at(most, scale), "track");
    if (!Double.isNaN(limit)) {
      double x = scale.px(limit);
      svg.line(new Point(x, 1), new Point(x, SIZE.height() - 1), "limit");
    }
    svg.line(at(spread.low(), scale), at(spread.high(), scale), "range");
    return svg.circle(at(spread.middle(), scale), 4, "middle").close();
  }

  private static Point at(double value, Scale scale) {
    return new Point(scale.px(value), MIDDLE);
  }
}
