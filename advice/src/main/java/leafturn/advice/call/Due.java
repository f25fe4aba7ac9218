package leafturn.advice.call;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.IntStream;
import leafturn.advice.call.DaysAhead.Season;

/** Says on which days a cut is due. */
final class Due {
  /** A ruler does not tell less, mm. */
  private static final double READING_MM = 0.5;

  private final Prospect prospect;
  private final CallRules rules;
  private final int[] nextVisits = new int[WeatherToCome.DAYS + 1];
  private final double[] overFractions = new double[WeatherToCome.DAYS + 1];

  /** The prospect may still lack its {@link WetLeaves}. */
  Due(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    for (int day = 0; day <= WeatherToCome.DAYS; day++) {
      int shown = day;
      nextVisits[day] = prospect.nextVisit(day + 1);
      long over = prospect.seasons().stream().filter(season -> over(season, shown)).count();
      overFractions[day] = (double) over / prospect.seasons().size();
    }
  }

  /**
   * True when a cut is due on a day: by the programme, or because on the next day of mowing more
   * than a third may come off; today also where the next cut that is due would be a wet one.
   */
  boolean on(int day) {
    return lastSafe(day) || inMost(day) || (day == 0 && beforeWet());
  }

  private boolean inMost(int day) {
    return prospect.inMost(season -> on(prospect.seasons().get(season), day));
  }

  /**
   * True on a dry day before a wet one of a cut that is due, if that is tomorrow or now worth it.
   */
  private boolean beforeWet() {
    if (prospect.known().newlySeeded() || !prospect.visit(0) || prospect.wet(0)) {
      return false;
    }
    int next = firstDueVisit();
    return next > 0 && prospect.wet(next) && (next == 1 || worthIt());
  }

  /** True when a cut is due today for no other reason than that the next one would be wet. */
  boolean aheadOfWet() {
    return !lastSafe(0) && !inMost(0) && beforeWet();
  }

  /** First visit from tomorrow on with a cut that is due; -1 when none is near. */
  int firstDueVisit() {
    return IntStream.rangeClosed(1, Visits.LOOK_AHEAD_DAYS)
        .filter(day -> prospect.visit(day) && inMost(day))
        .findFirst()
        .orElse(-1);
  }

  private boolean worthIt() {
    double today = prospect.today().heightMm();
    return Prospect.takenFraction(today, prospect.cutHeightMm()) >= rules.threshold(CallRule.DUE);
  }

  /** True on a safe visit after which the next one comes when it is no longer safe. */
  private boolean lastSafe(int day) {
    boolean any = prospect.known().facts().visits().anyDay();
    if (any || prospect.known().newlySeeded() || !prospect.visit(day) || !safe(day)) {
      return false;
    }
    int next = nextVisits[day];
    return next < 0 || !safe(Math.min(next, WeatherToCome.DAYS));
  }

  /**
   * The last of the usual days of the mowing season on which somebody can come and no more than a
   * third would come off; -1 where there is none, or where no end of the safe days is in sight.
   */
  int lastSafeDay() {
    int last = -1;
    Visits usual = prospect.known().facts().visits().forFurtherCuts();
    for (int day = 0; day <= WeatherToCome.DAYS; day++) {
      if (!safe(day)) {
        return last;
      }
      LocalDate date = prospect.date(day);
      last = usual.possible(date) && prospect.mowingSeason().contains(date) ? day : last;
    }
    return -1;
  }

  /** True when no more than a third would come off on a day in enough possible seasons. */
  boolean safe(int day) {
    return 1 - overFraction(day) >= rules.threshold(CallRule.SAFE_DAY_SHARE);
  }

  /** Share of the possible seasons in which more than a third would come off on a day, 0-1. */
  double overFraction(int day) {
    return overFractions[Math.min(day, WeatherToCome.DAYS)];
  }

  boolean on(Season season, int day) {
    double taken = Prospect.takenFraction(season.heightMm()[day], prospect.cutHeightMm());
    if (prospect.known().newlySeeded()) {
      return rooted(day)
          && season.heightMm()[day]
              >= rules.threshold(CallRule.FIRST_CUT) * prospect.cutHeightMm() - READING_MM;
    }
    return taken >= rules.threshold(CallRule.ONE_THIRD)
        || lastChance(season, day)
        || byProgramme(season, day);
  }

  /** First day on which the roots of new seed hold; empty where nobody told when it was sown. */
  Optional<LocalDate> seedHoldsFrom() {
    return Optional.ofNullable(prospect.known().facts().place().sown())
        .map(sown -> sown.plusDays(Math.round(rules.threshold(CallRule.FIRST_CUT_DAYS))));
  }

  /** False where seed lies too short a time for its roots to hold, whatever stands beside it. */
  boolean rooted(int day) {
    return seedHoldsFrom().filter(prospect.date(day)::isBefore).isEmpty();
  }

  /** True when by the next day of mowing more than a third would come off. */
  private boolean lastChance(Season season, int day) {
    int next = nextVisits[day];
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
      double taken = Prospect.takenFraction(heightMm, prospect.cutHeightMm());
      return Math.round(100 * taken) >= Math.round(100 * rules.threshold(CallRule.DUE)); // as shown
    }
    return prospect.today().daysSinceMowing() + day >= prospect.mowing().everyDays()
        && heightMm - prospect.cutHeightMm() >= rules.threshold(CallRule.LEAST_GROWTH);
  }
}
