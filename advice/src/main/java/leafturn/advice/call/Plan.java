package leafturn.advice.call;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts that a choice stands for.
 *
 * @param choice the kind of choice
 * @param cuts in order of days; none leaves the lawn unmown
 */
record Plan(Choice choice, List<PlannedCut> cuts) {
  Plan {
    cuts = List.copyOf(cuts);
  }

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
    return oneReturned(day == 0 ? Choice.MOW_AND_RETURN : Choice.WAIT_AND_RETURN, day, toMm);
  }

  /** One cut, returned, under the name of a choice. */
  static Plan oneReturned(Choice choice, int day, double toMm) {
    return new Plan(choice, List.of(new PlannedCut(day, toMm, 1)));
  }

  static Plan mowAndCollect(int day, double toMm) {
    return oneCollected(Choice.MOW_AND_COLLECT, day, toMm);
  }

  /** One cut, collected, under the name of a choice. */
  static Plan oneCollected(Choice choice, int day, double toMm) {
    return new Plan(choice, List.of(new PlannedCut(day, toMm, 0)));
  }

  /**
   * Cuts that step the height down.
   *
   * @param days their days, rising
   * @param heightsMm their heights, falling
   * @param collected how many of the first ones are collected
   */
  static Plan steps(List<Integer> days, List<Double> heightsMm, int collected) {
    List<PlannedCut> cuts = new ArrayList<>();
    for (int cut = 0; cut < days.size(); cut++) {
      cuts.add(new PlannedCut(days.get(cut), heightsMm.get(cut), cut < collected ? 0 : 1));
    }
    return new Plan(collected == 0 ? Choice.RAISE_AND_CUT_TWICE : Choice.RAISE_AND_COLLECT, cuts);
  }

  /** The same cuts, of which so many, the first ones, are collected. */
  Plan collecting(int collected) {
    return steps(
        cuts.stream().map(PlannedCut::day).toList(),
        cuts.stream().map(PlannedCut::toMm).toList(),
        collected);
  }

  /** Day of the first cut, days from the day of the call. */
  int day() {
    return cuts.get(0).day();
  }

  PlannedCut last() {
    return cuts.get(cuts.size() - 1);
  }

  /** True when all clippings stay on the turf. */
  boolean returned() {
    return cuts.stream().allMatch(cut -> cut.returnedShare() > 0);
  }

  /** True when no clippings stay on the turf. */
  boolean collected() {
    return cuts.stream().allMatch(cut -> cut.returnedShare() == 0);
  }

  /** Shares of the height that the cuts take one after the other, 0-1. */
  List<Double> takenFractions(Prospect prospect) {
    List<Double> taken = new ArrayList<>();
    double beforeMm = prospect.tallestMm(day());
    for (int cut = 0; cut < cuts.size(); cut++) {
      taken.add(Prospect.takenFraction(beforeMm, cuts.get(cut).toMm()));
      beforeMm = cuts.get(cut).toMm() + grownMm(prospect, cut);
    }
    return taken;
  }

  /** The largest of these shares, 0-1. */
  double largestTakenFraction(Prospect prospect) {
    return takenFractions(prospect).stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  /**
   * That largest share with its range: of the cut that takes it, by what the unmown lawn grows in
   * each possible season up to that cut from the one before.
   */
  Spread largestTaken(Prospect prospect) {
    List<Double> taken = takenFractions(prospect);
    int cut = taken.indexOf(largestTakenFraction(prospect));
    int to = Math.min(cuts.get(cut).day(), WeatherToCome.DAYS);
    int from = cut == 0 ? 0 : Math.min(cuts.get(cut - 1).day(), WeatherToCome.DAYS);
    double leftMm = cut == 0 ? prospect.heightMm(0) : cuts.get(cut - 1).toMm();
    double toMm = cuts.get(cut).toMm();
    Spread grown = prospect.spreadOf(season -> season.heightMm()[to] - season.heightMm()[from]);
    double middle = taken.get(cut);
    return new Spread(
        Math.min(middle, Prospect.takenFraction(leftMm + grown.low(), toMm)),
        middle,
        Math.max(middle, Prospect.takenFraction(leftMm + grown.high(), toMm)));
  }

  /** True when its first cut, at the highest that decks go to, takes the largest share. */
  boolean breaksByDeck(Prospect prospect) {
    List<Double> taken = takenFractions(prospect);
    return cuts.get(0).toMm() == DeckHeights.HIGHEST_MM
        && taken.get(0) == largestTakenFraction(prospect);
  }

  /** Share of the height that one cut down to the last height would take on the first day, 0-1. */
  double wholeFraction(Prospect prospect) {
    return Prospect.takenFraction(prospect.heightMm(day()), last().toMm());
  }

  /** Growth from a cut to the next one, mm; 0 after the last. */
  double grownMm(Prospect prospect, int cut) {
    return cut + 1 == cuts.size()
        ? 0
        : prospect.grownMm(cuts.get(cut).day(), cuts.get(cut + 1).day());
  }

  /** How many cuts, the first ones, are collected. */
  int collectedCuts() {
    return (int) cuts.stream().filter(cut -> cut.returnedShare() == 0).count();
  }

  boolean inSteps() {
    return cuts.size() > 1;
  }
}
