package leafturn.advice.call;

import leafturn.advice.call.DaysAhead.Season;

/** Says on which days a cut is due. */
final class Due {
  /** A ruler does not tell less, mm. */
  private static final double READING_MM = 0.5;

  private final Prospect prospect;
  private final CallRules rules;

  Due(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
  }

  /**
   * True when a cut is due on a day: by the programme, or because a day later more than a third
   * would come off.
   */
  boolean on(int day) {
    return prospect.inMost(season -> on(prospect.seasons().get(season), day));
  }

  /**
   * The last day on which somebody can come and no more than a third would come off; -1 where there
   * is none, or where no end of the safe days is in sight.
   */
  int lastSafeDay() {
    int last = -1;
    for (int day = 0; day <= WeatherToCome.DAYS; day++) {
      if (!safe(day)) {
        return last;
      }
      last = prospect.visit(day) ? day : last;
    }
    return -1;
  }

  /** True when no more than a third would come off on a day in enough possible seasons. */
  boolean safe(int day) {
    return 1 - overFraction(day) >= rules.threshold(CallRule.SAFE_DAY_SHARE);
  }

  /** Share of the possible seasons in which more than a third would come off on a day, 0-1. */
  double overFraction(int day) {
    long over = prospect.seasons().stream().filter(season -> over(season, day)).count();
    return (double) over / prospect.seasons().size();
  }

  boolean on(Season season, int day) {
    double taken = Prospect.takenFraction(season.heightMm()[day], prospect.cutHeightMm());
    if (prospect.known().newlySeeded()) {
      return season.heightMm()[day]
          >= rules.threshold(CallRule.FIRST_CUT) * prospect.cutHeightMm() - READING_MM;
    }
    return taken >= rules.threshold(CallRule.ONE_THIRD)
        || lastChance(season, day)
        || byProgramme(season, day);
  }

  /** True when by the next day of mowing more than a third would come off. */
  private boolean lastChance(Season season, int day) {
    int next = prospect.nextVisit(day + 1);
    return next < 0 || over(season, next);
  }

  private boolean over(Season season, int day) {
    int last = Math.min(day, WeatherToCome.DAYS);
    return Prospect.takenFraction(season.heightMm()[last], prospect.cutHeightMm())
        > prospect.thirdAndTolerance();
  }

  private boolean byProgramme(Season season, int day) {
    double heightMm = season.heightMm()[day];
    if (prospect.mowing().byOneThirdRule()) {
      return Prospect.takenFraction(heightMm, prospect.cutHeightMm())
          >= rules.threshold(CallRule.DUE);
    }
    return prospect.today().daysSinceMowing() + day >= prospect.mowing().everyDays()
        && heightMm - prospect.cutHeightMm() >= rules.threshold(CallRule.LEAST_GROWTH);
  }
}
