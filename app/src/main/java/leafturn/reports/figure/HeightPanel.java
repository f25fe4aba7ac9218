package leafturn.reports.figure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import leafturn.advice.call.Call;
import leafturn.advice.call.Outlook.DayToCome;
import leafturn.advice.call.Outlook.PastDay;
import leafturn.quantity.ShareWords;
import leafturn.reports.ClippingsFate;
import leafturn.reports.DayWords;
import leafturn.reports.UnitWords;

/** Height of the grass from the soil up: the saw-tooth of growth and mowings, and what may come. */
final class HeightPanel {
  private static final double HEADROOM = 1.06;
  private static final double CIRCLE_PX = 4.5;
  private static final double SLIDE_PX = 6;
  private static final int LEVELS = 6;
  private static final double LEADER_DROP_PX = 10;

  private final SeasonFrame frame;
  private final double cutHeightMm;
  private final double shareLimit;
  private final LocalDate on;
  private final UnitWords units;
  private final Box plot;
  private final Scale mm;
  private final LabelPlaces places;

  HeightPanel(SeasonFrame frame, Call call, double top) {
    this.frame = frame;
    cutHeightMm = call.today().cutHeightMm();
    shareLimit = call.limits().heightTakenFraction();
    on = call.on();
    units = new UnitWords(call.units());
    double width = frame.rightPx() - frame.leftPx();
    plot = new Box(frame.leftPx(), top, width, frame.format().heightPanelPx);
    mm = new Scale(0, HEADROOM * tallestMm(), plot.bottom(), plot.y());
    places = new LabelPlaces(new Box(plot.x(), 0, plot.width() + 10, plot.bottom()));
  }

  /** Height above which one cut takes more than the limit of the one-third rule. */
  private double limitMm() {
    return cutHeightMm / (1 - shareLimit);
  }

  private double tallestMm() {
    double tallest = limitMm();
    for (PastDay day : frame.past()) {
      tallest = Math.max(tallest, Math.max(day.heightMm(), heightBeforeCut(day)));
    }
    for (DayToCome day : frame.toCome()) {
      tallest = Math.max(tallest, day.heightMm().high());
    }
    return tallest;
  }

  void draw(Svg svg) {
    frame.monthLines(svg, plot.y(), plot.bottom());
    List<Point> curve = curve();
    places.keepFree(curve);
    svg.area(closedToGround(curve), "turf");
    level(svg, cutHeightMm, "cut-line");
    level(svg, limitMm(), "third-line");
    fan(svg);
    svg.line(new Point(plot.x(), plot.bottom()), new Point(plot.right(), plot.bottom()), "ground");
    svg.openLine(curve, "grass-line");
    today(svg);
    mowings(svg);
    lineLabels(svg);
    Point title = new Point(plot.x(), frame.format().typePx);
    svg.words(frame.label(title, Label.Align.START, "words", "Height, " + units.heightUnit()));
  }

  private List<Point> curve() {
    List<Point> points = new ArrayList<>();
    for (PastDay day : frame.past()) {
      if (isMown(day)) {
        points.add(point(day, day.heightBeforeCutMm()));
      }
      points.add(point(day, day.heightMm()));
    }
    return points;
  }

  private List<Point> closedToGround(List<Point> curve) {
    List<Point> points = new ArrayList<>(curve);
    points.add(new Point(curve.get(curve.size() - 1).x(), plot.bottom()));
    points.add(new Point(curve.get(0).x(), plot.bottom()));
    return points;
  }

  private void level(Svg svg, double heightMm, String cssClass) {
    double y = mm.px(heightMm);
    svg.line(new Point(plot.x(), y), new Point(plot.right(), y), cssClass);
    String words = units.heightNumber(heightMm);
    Point left = new Point(plot.x() - 6, y + 0.35 * frame.format().typePx);
    svg.words(frame.label(left, Label.Align.END, "soft", words));
  }

  private void fan(Svg svg) {
    if (frame.toCome().isEmpty()) {
      return;
    }
    Point now = point(frame.today(), frame.today().heightMm());
    List<Point> low = new ArrayList<>(List.of(now));
    List<Point> middle = new ArrayList<>(List.of(now));
    List<Point> high = new ArrayList<>(List.of(now));
    for (DayToCome day : frame.toCome()) {
      double x = frame.x(day.day());
      low.add(new Point(x, mm.px(day.heightMm().low())));
      middle.add(new Point(x, mm.px(day.heightMm().middle())));
      high.add(new Point(x, mm.px(day.heightMm().high())));
    }
    List.of(low, middle, high).forEach(places::keepFree);
    List<Point> outline = new ArrayList<>(high);
    Collections.reverse(low);
    outline.addAll(low);
    svg.area(outline, "fan").openLine(middle, "fan-middle");
  }

  private void today(Svg svg) {
    double x = frame.x(frame.today().day());
    places.keepFree(List.of(new Point(x, 0), new Point(x, plot.bottom())));
    String words = lastDayName() + DayWords.date(frame.today().day());
    Label label = frame.label(new Point(x, 0), Label.Align.END, "strong", words);
    double baseline = frame.format().typePx;
    List<Point> beside = List.of(new Point(x - 5, baseline), new Point(x + 5, baseline));
    if (!label.at(beside.get(0)).box().inside(new Box(plot.x(), 0, plot.width(), plot.bottom()))) {
      label = frame.label(new Point(x, 0), Label.Align.START, "strong", words);
      beside = List.of(new Point(x + 5, baseline));
    }
    places.place(label, beside).ifPresent(svg::words);
  }

  /** The days so far end last evening where today's weather is not known. */
  private String lastDayName() {
    return frame.today().day().equals(on) ? "today, " : "last evening, ";
  }

  private void mowings(Svg svg) {
    List<PastDay> mown = frame.past().stream().filter(HeightPanel::isMown).toList();
    for (PastDay day : mown) {
      Point place = point(day, day.heightMm());
      svg.circle(place, CIRCLE_PX, markClass(day));
      places.keepFree(around(place));
    }
    Set<ClippingsFate> named = EnumSet.noneOf(ClippingsFate.class);
    for (int i = mown.size() - 1; i >= 0; i--) {
      ClippingsFate fate = ClippingsFate.of(mown.get(i).returned());
      if (!named.contains(fate) && nameMowing(svg, mown.get(i))) {
        named.add(fate);
      }
    }
  }

  private boolean nameMowing(Svg svg, PastDay day) {
    Point circle = point(day, day.heightMm());
    String words = ClippingsFate.words(day.returned(), units.units());
    double below = circle.y() + CIRCLE_PX + frame.format().typePx;
    Label label = frame.label(circle, Label.Align.MIDDLE, "words", words);
    return places
        .place(
            label,
            List.of(
                new Point(circle.x(), below), new Point(circle.x(), below + frame.format().typePx)))
        .map(svg::words)
        .isPresent();
  }

  private void lineLabels(Svg svg) {
    double type = frame.format().typePx;
    double thirdMm = limitMm();
    String height = units.height(thirdMm);
    String share = ShareWords.of(shareLimit);
    String third =
        frame.format().isWide()
            ? "above " + height + ", one cut takes more than " + share
            : share + " comes off at " + height;
    String cut = "cut height " + units.height(cutHeightMm);
    slide(svg, cut, mm.px(cutHeightMm) + 1.15 * type, type);
    slide(svg, third, mm.px(thirdMm) - 5, -type);
    fanLabel(svg);
  }

  /** Tries a label along a level from the left until it is free, then at levels further off. */
  private void slide(Svg svg, String words, double baseline, double stepPx) {
    List<Point> candidates = new ArrayList<>();
    for (int level = 0; level < LEVELS; level++) {
      for (double x = plot.x() + 6; x < plot.right(); x += SLIDE_PX) {
        candidates.add(new Point(x, baseline + level * stepPx));
      }
    }
    Label label = frame.label(candidates.get(0), Label.Align.START, "words", words);
    places.place(label, candidates).ifPresent(svg::words);
  }

  /** Names the fan from the open ground left of today, with a line that leads to it. */
  private void fanLabel(Svg svg) {
    if (frame.toCome().isEmpty()) {
      return;
    }
    DayToCome named = frame.toCome().get(2 * frame.toCome().size() / 3);
    Point target = new Point(frame.x(named.day()), mm.px(named.heightMm().high()));
    double right = frame.x(frame.today().day()) - 14;
    List<Point> candidates = new ArrayList<>();
    for (double y = target.y() - LEADER_DROP_PX; y > plot.y() + 6; y -= 2) {
      candidates.add(new Point(right, y));
    }
    Label label = frame.label(target, Label.Align.END, "words", "if not mown, 10–90 %");
    places
        .place(label, candidates)
        .ifPresent(
            placed -> {
              double y = placed.anchor().y() - 0.32 * frame.format().typePx;
              Point bend = new Point(target.x(), y);
              svg.words(placed).openLine(List.of(new Point(right + 4, y), bend, target), "leader");
            });
  }

  private Point point(PastDay day, double heightMm) {
    return new Point(frame.x(day.day()), mm.px(heightMm));
  }

  private static Box around(Point place) {
    return new Box(place.x() - CIRCLE_PX, place.y() - CIRCLE_PX, 2 * CIRCLE_PX, 2 * CIRCLE_PX);
  }

  private static boolean isMown(PastDay day) {
    return !Double.isNaN(day.heightBeforeCutMm());
  }

  private static double heightBeforeCut(PastDay day) {
    return isMown(day) ? day.heightBeforeCutMm() : 0;
  }

  private static String markClass(PastDay day) {
    return switch (ClippingsFate.of(day.returned())) {
      case RETURNED -> "mown-returned";
      case COLLECTED -> "mown-collected";
      case PARTLY_RETURNED -> "mown-partly";
    };
  }
}
