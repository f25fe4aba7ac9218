package leafturn.advice.evidence;

import java.time.MonthDay;
import java.util.List;
import leafturn.model.lawn.CalendarDay;
import leafturn.model.lawn.Programme;

/**
 * How a plot of a trial is kept.
 *
 * @param feed fertiliser
 * @param returnedShare share of the clippings returned, 0 to 1
 * @param mowing when it is mown
 * @param irrigationShare share of the water demand given back
 */
record Treatment(Feed feed, double returnedShare, Mowing mowing, double irrigationShare) {

  /**
   * Fast fertiliser in equal parts.
   *
   * @param daysOfYear days it is spread on
   */
  record Feed(
      double nitrogenKgPerHa,
      double phosphorusKgPerHa,
      double potassiumKgPerHa,
      List<Integer> daysOfYear) {
    private static final List<Integer> QUARTERS = List.of(110, 150, 245, 280);
    private static final double G_PER_M2 = 0.1;

    Feed {
      daysOfYear = List.copyOf(daysOfYear);
    }

    /** N alone, in four quarters. */
    static Feed nitrogen(double kgPerHa) {
      return new Feed(kgPerHa, 0, 0, QUARTERS);
    }

    private List<Programme.Feeding> feedings() {
      double share = G_PER_M2 / daysOfYear.size();
      return daysOfYear.stream()
          .map(
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

    /** Weekly as on a round of lawns, 15 April to 31 October, from 6 mm. */
    static final Mowing WEEKLY_ROUND =
        new Mowing(7, CalendarDay.on(MonthDay.of(4, 15)), CalendarDay.on(MonthDay.of(10, 31)), 6);

    /** By the one-third rule, days 75 to 345. */
    static final Mowing ONE_THIRD =
        new Mowing(0, CalendarDay.ofYear(75), CalendarDay.ofYear(345), 6);
  }

  /** Clippings collected, weekly mown plots, N in four quarters, no irrigation. */
  static Treatment collected(double nitrogenKgPerHa) {
    return new Treatment(Feed.nitrogen(nitrogenKgPerHa), 0, Mowing.WEEKLY_PLOTS, 0);
  }

  /** As {@link #collected}, with all clippings returned. */
  static Treatment returned(double nitrogenKgPerHa) {
    return collected(nitrogenKgPerHa).withReturn();
  }

  Treatment withReturn() {
    return new Treatment(feed, 1, mowing, irrigationShare);
  }

  Treatment mown(Mowing rule) {
    return new Treatment(feed, returnedShare, rule, irrigationShare);
  }

  Treatment irrigated(double share) {
    return new Treatment(feed, returnedShare, mowing, share);
  }

  Treatment fed(Feed other) {
    return new Treatment(other, returnedShare, mowing, irrigationShare);
  }

  /** The same mowing and irrigation with a common N rate, clippings collected. */
  Treatment past(double nitrogenKgPerHa) {
    return new Treatment(Feed.nitrogen(nitrogenKgPerHa), 0, mowing, irrigationShare);
  }

  Programme programme(double heightMm) {
    return new Programme(
        new Programme.Mowing(
            heightMm, mowing.everyDays(), mowing.from(), mowing.to(), returnedShare),
        feed.feedings(),
        irrigationShare);
  }
}
