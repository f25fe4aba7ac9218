package leafturn.advice.evidence;

import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Programme;

/**
 * How a plot is kept: fed in four equal quarters on days 110, 150, 245 and 280, mown by rule.
 *
 * @param nitrogenKgPerHa fast N a year
 * @param returnedShare share of the clippings returned, 0 or 1 in these trials
 * @param mowing when it is mown
 * @param irrigationShare share of the water demand given back
 * @param phosphorusKgPerHa P a year
 * @param potassiumKgPerHa K a year
 */
record Treatment(
    double nitrogenKgPerHa,
    double returnedShare,
    Mowing mowing,
    double irrigationShare,
    double phosphorusKgPerHa,
    double potassiumKgPerHa) {
  private static final int[] FEEDING_DAYS = {110, 150, 245, 280};
  private static final double KG_PER_HA_IN_G_PER_M2 = 0.1;

  /**
   * When a plot is mown, and what growth is worth a cut.
   *
   * @param everyDays interval, 0 for the one-third rule
   * @param leastGrowthMm growth below which a cut by interval is skipped, mm
   */
  record Mowing(int everyDays, CalendarDay from, CalendarDay to, double leastGrowthMm) {
    /** Weekly as on field plots, days 75 to 345, from 3 mm. */
    static final Mowing WEEKLY_PLOTS =
        new Mowing(7, CalendarDay.ofYear(75), CalendarDay.ofYear(345), 3);

    /** Weekly as a contractor goes round, 15 April to 31 October, from 6 mm. */
    static final Mowing WEEKLY_ROUND =
        new Mowing(
            7, CalendarDay.on(MonthDay.of(4, 15)), CalendarDay.on(MonthDay.of(10, 31)), 6);

    /** By the one-third rule, days 75 to 345. */
    static final Mowing ONE_THIRD =
        new Mowing(0, CalendarDay.ofYear(75), CalendarDay.ofYear(345), 6);
  }

  /** Weekly mown plots without irrigation, P and K, with all clippings collected. */
  static Treatment collected(double nitrogenKgPerHa) {
    return new Treatment(nitrogenKgPerHa, 0, Mowing.WEEKLY_PLOTS, 0, 0, 0);
  }

  /** As {@link #collected}, with all clippings returned. */
  static Treatment returned(double nitrogenKgPerHa) {
    return collected(nitrogenKgPerHa).returning(1);
  }

  Treatment returning(double share) {
    return new Treatment(
        nitrogenKgPerHa, share, mowing, irrigationShare, phosphorusKgPerHa, potassiumKgPerHa);
  }

  Treatment mown(Mowing rule) {
    return new Treatment(
        nitrogenKgPerHa, returnedShare, rule, irrigationShare, phosphorusKgPerHa, potassiumKgPerHa);
  }

  Treatment irrigated(double share) {
    return new Treatment(
        nitrogenKgPerHa, returnedShare, mowing, share, phosphorusKgPerHa, potassiumKgPerHa);
  }

  Treatment fed(double phosphorus, double potassium) {
    return new Treatment(
        nitrogenKgPerHa, returnedShare, mowing, irrigationShare, phosphorus, potassium);
  }

  Programme programme(double heightMm) {
    return new Programme(
        new Programme.Mowing(
            heightMm, mowing.everyDays(), mowing.from(), mowing.to(), returnedShare),
        feedings(),
        irrigationShare);
  }

  private List<Programme.Feeding> feedings() {
    double share = KG_PER_HA_IN_G_PER_M2 / FEEDING_DAYS.length;
    return Arrays.stream(FEEDING_DAYS)
        .mapToObj(
            day ->
                new Programme.Feeding(
                    CalendarDay.ofYear(day),
                    share * nitrogenKgPerHa,
                    0,
                    share * phosphorusKgPerHa,
                    share * potassiumKgPerHa))
        .toList();
  }
}
