package leafturn.advice.call;

import java.util.List;

/**
 * Cuts that a choice stands for.
 *
 * @param choice the kind of choice
 * @param cuts in order of days; none leaves the lawn unmown
 */
record Plan(Choice choice, List<PlannedCut> cuts) {

  /**
   * @param day days from the day of the call, 0 or more
   * @param toMm height it is cut to, mm
   * @param returnedShare share of the clippings returned, 0-1
   */
  record PlannedCut(int day, double toMm, double returnedShare) {}

  static Plan unmown() {
    return new Plan(Choice.LEAVE_ALONE, List.of());
  }

  static Plan mowAndReturn(int day, double toMm) {
    return new Plan(
        day == 0 ? Choice.MOW_AND_RETURN : Choice.WAIT_AND_RETURN,
        List.of(new PlannedCut(day, toMm, 1)));
  }

  static Plan mowAndCollect(int day, double toMm) {
    return new Plan(Choice.MOW_AND_COLLECT, List.of(new PlannedCut(day, toMm, 0)));
  }

  static Plan cutTwice(int day, double firstMm, int daysBetween, double toMm) {
    return new Plan(
        Choice.RAISE_AND_CUT_TWICE,
        List.of(new PlannedCut(day, firstMm, 1), new PlannedCut(day + daysBetween, toMm, 1)));
  }

  /** Day of the first cut, days from the day of the call. */
  int day() {
    return cuts.get(0).day();
  }

  boolean returned() {
    return choice != Choice.MOW_AND_COLLECT;
  }
}
