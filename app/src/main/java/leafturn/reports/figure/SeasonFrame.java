package leafturn.reports.figure;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import leafturn.advice.call.Call;
import leafturn.advice.call.Outlook.DayToCome;
import leafturn.advice.call.Outlook.PastDay;
import leafturn.reports.DayWords;

/**
 * What the panels of the season figure share: the days, their scale and the type size.
 *
 * @param past the season so far, at least one day
 * @param toCome the days to come that are shown
 */
record SeasonFrame(SeasonFormat format, List<PastDay> past, List<DayToCome> toCome, Scale days) {
  private static final int MOST_DAYS = 14;
  private static final int LEAST_DAYS = 5;
  private static final double RIGHT_PX = 10;

  static SeasonFrame of(Call call, SeasonFormat format) {
    List<PastDay> all = call.outlook().past();
    List<PastDay> past = all.subList(Math.max(0, all.size() - format.pastDays), all.size());
    if (past.isEmpty()) {
      throw new IllegalArgumentException("a season figure needs at least one day so far");
    }
    List<DayToCome> ahead = call.outlook().toCome();
    List<DayToCome> toCome = ahead.subList(0, daysShown(ahead, call.today().cutHeightMm()));
    LocalDate last =
        toCome.isEmpty() ? past.get(past.size() - 1).day() : toCome.get(toCome.size() - 1).day();
    long first = past.get(0).day().toEpochDay();
    long end = Math.max(first + 1, last.toEpochDay());
    Scale days = new Scale((double) first, (double) end, format.leftPx, format.widthPx - RIGHT_PX);
    return new SeasonFrame(format, past, toCome, days);
  }

  /** Days to come up to the one on which half the height might come off: far beyond any call. */
  private static int daysShown(List<DayToCome> toCome, double cutHeightMm) {
    int days = 0;
    while (days < Math.min(MOST_DAYS, toCome.size())
        && (days < LEAST_DAYS || toCome.get(days).heightMm().high() <= 2 * cutHeightMm)) {
      days++;
    }
    return days;
  }

  double x(LocalDate day) {
    return days.px((double) day.toEpochDay());
  }

  PastDay today() {
    return past.get(past.size() - 1);
  }

  double dayWidthPx() {
    return days.px(days.from() + 1) - days.px(days.from());
  }

  double leftPx() {
    return format.leftPx;
  }

  double rightPx() {
    return days.toPx();
  }

  /** The first days of the months inside the figure. */
  List<LocalDate> monthStarts() {
    List<LocalDate> starts = new ArrayList<>();
    LocalDate month = past.get(0).day().withDayOfMonth(1);
    for (; month.toEpochDay() <= days.to(); month = month.plusMonths(1)) {
      if (month.toEpochDay() >= days.from()) {
        starts.add(month);
      }
    }
    return starts;
  }

  /** A faint upright line at the first of each month. */
  void monthLines(Svg svg, double top, double bottom) {
    for (LocalDate month : monthStarts()) {
      svg.line(new Point(x(month), top), new Point(x(month), bottom), "month");
    }
  }

  /** The months' names at the first of each, where they have room. */
  void monthNames(Svg svg, double baseline) {
    double free = 0;
    for (LocalDate month : monthStarts()) {
      String name = DayWords.month(month);
      Label label = label(new Point(x(month) + 4, baseline), Label.Align.START, "soft", name);
      if (label.box().x() >= free && label.box().right() <= format.widthPx) {
        svg.words(label);
        free = label.box().right();
      }
    }
  }

  Label label(Point anchor, Label.Align align, String cssClass, String words) {
    return new Label(anchor, align, format.typePx, cssClass, words);
  }
}
