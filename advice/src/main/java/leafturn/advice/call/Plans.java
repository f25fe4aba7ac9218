package leafturn.advice.call;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/** All plans that are compared: on each day of the coming week, and on the next day of mowing. */
final class Plans {
  /** Longest wait that is offered to those who can mow on any day, days. */
  static final int LONGEST_WAIT_DAYS = 7;

  private static final int WEEK = 7;
  private static final double DECK_STEP_MM = 5;
  private static final double DECK_STEP_BELOW_MM = 40;
  private static final double DECK_SLACK = 1.1;
  private static final int USUAL_MOST_CUTS = 3;

  private final Prospect prospect;
  private final CallRules rules;
  private final WashingIn washingIn;

  Plans(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.washingIn = new WashingIn(prospect);
  }

  List<Plan> all() {
    List<Plan> plans = new ArrayList<>();
    for (int day : days()) {
      addTo(plans, day);
    }
    return plans;
  }

  /** The days of the coming week, and the next visit that no label forbids where it lies beyond. */
  private List<Integer> days() {
    List<Integer> days = new ArrayList<>();
    for (int day = 0; day <= LONGEST_WAIT_DAYS; day++) {
      days.add(day);
    }
    IntStream.rangeClosed(0, Visits.LOOK_AHEAD_DAYS)
        .filter(prospect::visit)
        .filter(day -> prospect.known().labelWait(prospect.date(day)).isEmpty())
        .limit(1)
        .filter(day -> day > LONGEST_WAIT_DAYS)
        .forEach(days::add);
    return days;
  }

  private void addTo(List<Plan> plans, int day) {
    double cutHeightMm = prospect.cutHeightMm();
    plans.add(Plan.mowAndReturn(day, cutHeightMm));
    plans.add(Plan.mowAndCollect(day, cutHeightMm));
    if (day == 0 && prospect.laterToday()) {
      plans.add(Plan.oneReturned(Choice.WAIT_FOR_DRY_HOURS, 0, cutHeightMm));
    }
    if (prospect.known().leafCoverFraction() > 0) {
      plans.add(Plan.oneReturned(Choice.CHOP_LEAVES_AND_RETURN, day, cutHeightMm));
    }
    OptionalInt watered = washingIn.waterDay();
    if (watered.isPresent() && watered.getAsInt() < day) {
      plans.add(Plan.oneReturned(Choice.WATER_IN_FIRST, day, cutHeightMm));
    }
    if (prospect.lengthMm(day, cutHeightMm) >= 2 * rules.threshold(CallRule.LEAST_GROWTH)) {
      if (!prospect.passes().always()) {
        plans.add(Plan.oneReturned(Choice.DOUBLE_PASS, day, cutHeightMm));
      }
      addSteps(plans, day);
    }
    if (new GreenUp(prospect).mayBeLowered(day)) {
      plans.add(Plan.oneCollected(Choice.LOWER_ONCE_AND_COLLECT, day, GreenUp.lowMm(prospect)));
    }
  }

  /**
   * Two cuts or three, or more where the rules allow more and three would take more than a third at
   * once: returned, or the first ones collected.
   */
  private void addSteps(List<Plan> plans, int day) {
    boolean gentle = false;
    int most = rules.mostCuts();
    for (int cuts = 2; cuts <= most && (cuts <= USUAL_MOST_CUTS || !gentle); cuts++) {
      List<Integer> days = daysOfCuts(day, cuts);
      List<Double> heights = heightsMm(days);
      if (worthEachStep(day, heights)) {
        for (int collected = 0; collected <= cuts; collected++) {
          plans.add(Plan.steps(days, heights, collected));
        }
        double taken = Plan.steps(days, heights, 0).largestTakenFraction(prospect);
        gentle = gentle || taken <= prospect.thirdAndTolerance();
      } else if (cuts == 2) {
        addRaised(plans, days);
      }
    }
  }

  /**
   * Where so much grows between two cuts that they cannot share what comes off, the first takes no
   * more than the one-third rule lets off, and the second the rest.
   */
  private void addRaised(List<Plan> plans, List<Integer> days) {
    double keptMm = (1 - rules.threshold(CallRule.ONE_THIRD)) * tallestMm(days.get(0));
    double raisedMm = deckStepMm() * Math.ceil(keptMm / deckStepMm());
    List<Double> heights = List.of(raisedMm, prospect.cutHeightMm());
    if (raisedMm <= DeckHeights.HIGHEST_MM && worthEachStep(days.get(0), heights)) {
      for (int collected = 0; collected <= 2; collected++) {
        plans.add(Plan.steps(days, heights, collected));
      }
    }
  }

  /** True when each step lowers the grass by a step of the deck at least. */
  private boolean worthEachStep(int day, List<Double> heightsMm) {
    double beforeMm = tallestMm(day);
    for (double heightMm : heightsMm) {
      if (!(beforeMm - heightMm >= deckStepMm())) {
        return false;
      }
      beforeMm = heightMm;
    }
    return true;
  }

  /** Each cut some days after the one before, on a day on which whoever mows can come. */
  private List<Integer> daysOfCuts(int first, int cuts) {
    List<Integer> days = new ArrayList<>(List.of(first));
    int between = (int) Math.round(rules.threshold(CallRule.CUT_TWICE_DAYS));
    Visits further = prospect.known().facts().visits().forFurtherCuts();
    while (days.size() < cuts) {
      int earliest = days.get(days.size() - 1) + between;
      int visit = prospect.nextOf(further, earliest);
      days.add(visit < 0 ? earliest + WEEK - between : visit);
    }
    return Collections.unmodifiableList(days);
  }

  /**
   * Heights of cuts. Where the first of even shares would stand above any deck, and the highest
   * deck takes no more than half, it is cut there (common practice, no source: one cut of long
   * grass that breaks the one-third rule, collected, rather than a scythe).
   */
  private List<Double> heightsMm(List<Integer> days) {
    double tallestMm = tallestMm(days.get(0));
    List<Double> even = evenHeightsMm(tallestMm, days);
    double deckMm = DeckHeights.HIGHEST_MM;
    boolean byDeck =
        even.get(0) > deckMm
            && prospect.cutHeightMm() < deckMm
            && Prospect.takenFraction(tallestMm, deckMm) <= rules.threshold(CallRule.HALF);
    if (!byDeck) {
      return even;
    }
    List<Double> heights = new ArrayList<>(List.of(deckMm));
    double nextMm = deckMm + prospect.grownMm(days.get(0), days.get(1));
    heights.addAll(evenHeightsMm(nextMm, days.subList(1, days.size())));
    return heights;
  }

  /**
   * Heights of cuts that take the same share, in steps of a mower's deck: with g grown between them
   * the share s of each keeps ((H s + g) s + g) s ... at the cut height.
   */
  private List<Double> evenHeightsMm(double tallestMm, List<Integer> days) {
    double low = 0;
    double high = 1;
    for (int halving = 0; halving < 50; halving++) {
      double middle = (low + high) / 2;
      if (endMm(tallestMm, middle, days) > prospect.cutHeightMm()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    List<Double> heights = new ArrayList<>();
    double heightMm = tallestMm;
    for (int cut = 0; cut < days.size() - 1; cut++) {
      double toMm = withinDeck(cut, stepped(heightMm * high));
      heights.add(toMm);
      heightMm = toMm + prospect.grownMm(days.get(cut), days.get(cut + 1));
    }
    heights.add(prospect.cutHeightMm());
    return heights;
  }

  /** A further cut little above the highest deck is set to it. */
  private static double withinDeck(int cut, double toMm) {
    return cut > 0 && toMm <= DECK_SLACK * DeckHeights.HIGHEST_MM
        ? Math.min(toMm, DeckHeights.HIGHEST_MM)
        : toMm;
  }

  private double endMm(double tallestMm, double left, List<Integer> days) {
    double heightMm = left * tallestMm;
    for (int cut = 1; cut < days.size(); cut++) {
      heightMm = left * (heightMm + prospect.grownMm(days.get(cut - 1), days.get(cut)));
    }
    return heightMm;
  }

  private double stepped(double heightMm) {
    return Math.max(prospect.cutHeightMm(), deckStepMm() * Math.round(heightMm / deckStepMm()));
  }

  private double deckStepMm() {
    return prospect.cutHeightMm() < DECK_STEP_BELOW_MM ? 1 : DECK_STEP_MM;
  }

  private double tallestMm(int day) {
    return prospect.tallestMm(day);
  }
}
