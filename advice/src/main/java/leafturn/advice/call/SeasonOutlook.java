package leafturn.advice.call;

import java.util.ArrayList;
import java.util.List;

/** The season so far and the days to come if the lawn is not mown. */
record SeasonOutlook(Prospect prospect) {
  private static final int SHOWN_DAYS = 28;
  private static final int WEEK = 7;

  /** A day with this much rain or more counts as wet in the outlook, mm. */
  private static final double WET_DAY_MM = 1;

  Outlook outlook() {
    List<Outlook.DayToCome> toCome = new ArrayList<>();
    for (int day = 1; day <= SHOWN_DAYS; day++) {
      int shown = day;
      toCome.add(
          new Outlook.DayToCome(
              prospect.date(day),
              prospect.spreadOf(season -> season.heightMm()[shown]),
              prospect.spreadOf(season -> season.rainMm()[shown]),
              wetFraction(shown)));
    }
    return new Outlook(
        prospect.today().past(),
        toCome,
        prospect.spreadOf(SeasonOutlook::weekMm),
        prospect.today().ownGrowth(),
        !prospect.standsIn());
  }

  private double wetFraction(int day) {
    long wet = prospect.seasons().stream().filter(s -> s.rainMm()[day] >= WET_DAY_MM).count();
    return (double) wet / prospect.seasons().size();
  }

  private static double weekMm(DaysAhead.Season season) {
    double sum = 0;
    for (int day = 1; day <= WEEK; day++) {
      sum += season.rainMm()[day];
    }
    return sum;
  }
}
