package leafturn.reports.figure;

import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.Call.Today;
import leafturn.reports.UnitWords;

/**
 * The standing grass to scale from the soil up: what a cut would leave, and what it would take off.
 * Heights are drawn true; the lean of the blades is decoration.
 */
public final class TurfSketch {
  private static final double[] LEAN_PX = {-7, 3, 8, -3, 5, -9, 2, 7, -5, 9, -2};
  private static final double BLADE_GAP_PX = 6;
  private static final double EDGE_PX = 9;
  private static final double GROUND_PX = 8;
  private static final double TYPE_PX = 15;
  private static final double HEADROOM = 1.08;

  private final Box size;
  private final Scale heightPx;

  /**
   * @param widthPx width, px
   * @param tallPx height, px
   * @param tallestMm the grass height that just fits, mm
   */
  public TurfSketch(double widthPx, double tallPx, double tallestMm) {
    size = new Box(0, 0, widthPx, tallPx);
    heightPx = new Scale(0, HEADROOM * tallestMm, tallPx - GROUND_PX, 0);
  }

  /** The sketch alone, for a place where the heights stand beside it in words. */
  public String draw(Today today) {
    Svg svg = Svg.decorative(size, "turf-sketch");
    blades(svg, today, size.width());
    levels(svg, today, size.width());
    return svg.close();
  }

  /** The sketch with its heights written at the lines, in the reader's units. */
  public String drawLabelled(Today today, UnitWords units) {
    String label =
        "The grass stands at "
            + units.height(today.heightMm())
            + "; the cut height is "
            + units.height(today.cutHeightMm());
    Svg svg = Svg.labelled(size, "turf-sketch", label);
    double grassWidth = 0.52 * size.width();
    blades(svg, today, grassWidth);
    levels(svg, today, grassWidth + 10);
    labels(svg, today, units, grassWidth + 18);
    return svg.close();
  }

  private void blades(Svg svg, Today today, double width) {
    double left = Math.min(today.heightMm(), today.cutHeightMm());
    List<Curve> staying = new ArrayList<>();
    List<Curve> comingOff = new ArrayList<>();
    int blade = 0;
    for (double x = EDGE_PX; x <= width - EDGE_PX; x += BLADE_GAP_PX) {
      double lean = LEAN_PX[blade++ % LEAN_PX.length];
      staying.add(bent(x, lean, 0, left));
      if (today.heightMm() > left) {
        comingOff.add(bent(x, lean, left, today.heightMm()));
      }
    }
    svg.curves(comingOff, "blade-off").curves(staying, "blade");
    double ground = heightPx.px(0);
    svg.line(new Point(0, ground), new Point(width, ground), "ground");
  }

  /** A piece of a blade that bends the more the higher it stands. */
  private Curve bent(double x, double lean, double fromMm, double toMm) {
    double from = fromMm / heightPx.to();
    double to = toMm / heightPx.to();
    return new Curve(
        new Point(x + lean * from * from, heightPx.px(fromMm)),
        new Point(x + lean * from * to, heightPx.px((fromMm + toMm) / 2)),
        new Point(x + lean * to * to, heightPx.px(toMm)));
  }

  private void levels(Svg svg, Today today, double width) {
    double cut = heightPx.px(today.cutHeightMm());
    svg.line(new Point(0, cut), new Point(width, cut), "cut-line");
  }

  /** The upper level keeps its words above the lower one's, however close the two lie. */
  private void labels(Svg svg, Today today, UnitWords units, double x) {
    String now = units.height(today.heightMm()) + " today";
    String cut = units.height(today.cutHeightMm()) + " cut height";
    double nowLevel = heightPx.px(today.heightMm());
    double cutLevel = heightPx.px(today.cutHeightMm());
    double apart = Math.abs(nowLevel - cutLevel);
    double aside = Math.max(0, (1.2 * TYPE_PX - apart) / 2);
    double nowShift = nowLevel <= cutLevel ? -aside : aside;
    svg.words(label(x, nowLevel + nowShift, now)).words(label(x, cutLevel - nowShift, cut));
  }

  private static Label label(double x, double level, String words) {
    Point place = new Point(x, Math.max(TYPE_PX, level + 0.35 * TYPE_PX));
    return new Label(place, Label.Align.START, TYPE_PX, "words", words);
  }
}
