package leafturn.advice.call;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Weighs all plans of the coming week by the ranked rules: the plan whose heaviest broken rule is
 * lightest wins; then the next one counts, and at last the earlier day.
 */
final class Weighing {
  /** Longest wait that is offered, days. */
  static final int LONGEST_WAIT_DAYS = 7;

  private static final double DECK_STEP_MM = 5;
  private static final double DECK_STEP_BELOW_MM = 40;

  /**
   * @param broken rules the plan breaks, heaviest first
   */
  record Weighed(Plan plan, List<CallRule> broken) {
    boolean breaks(CallRule rule) {
      return broken.contains(rule);
    }
  }

  private final Prospect prospect;
  private final CallRules rules;
  private final List<Weighed> plans = new ArrayList<>();

  Weighing(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    double cutHeightMm = prospect.cutHeightMm();
    for (int day = 0; day <= LONGEST_WAIT_DAYS; day++) {
      weigh(Plan.mowAndReturn(day, cutHeightMm));
      weigh(Plan.mowAndCollect(day, cutHeightMm));
      double firstMm = raisedMm(day);
      if (firstMm > cutHeightMm) {
        weigh(Plan.cutTwice(day, firstMm, daysBetween(), cutHeightMm));
      }
    }
  }

  /** The rule for which the lawn should be left alone, if there is one. */
  Optional<CallRule> leave() {
    if (always(CallRule.SEASON)) {
      return Optional.of(CallRule.SEASON);
    }
    LawnToday today = prospect.today();
    if (today.recentGrowthGPerM2() < rules.threshold(CallRule.HARDLY_GROWING)
        && today.soilWaterFraction() < rules.threshold(CallRule.DRY_SOIL)) {
      return Optional.of(CallRule.HARDLY_GROWING);
    }
    if (plans.stream().allMatch(p -> p.breaks(CallRule.LEAST_GROWTH) || p.breaks(CallRule.DUE))) {
      return Optional.of(CallRule.DUE);
    }
    return Optional.empty();
  }

  private boolean always(CallRule rule) {
    return plans.stream().allMatch(plan -> plan.breaks(rule));
  }

  /** The best plan of all. */
  Weighed best() {
    return best(plan -> true).orElseThrow();
  }

  /** The best plan of a kind. */
  Optional<Weighed> best(Predicate<Plan> kind) {
    return plans.stream().filter(weighed -> kind.test(weighed.plan())).min(byRank());
  }

  /** Returning or collecting on a day. */
  Weighed of(Choice choice, int day) {
    return best(plan -> plan.choice() == choice && plan.day() == day).orElseThrow();
  }

  private Comparator<Weighed> byRank() {
    return (one, other) -> {
      int common = Math.min(one.broken().size(), other.broken().size());
      for (int place = 0; place < common; place++) {
        int difference =
            Integer.compare(rank(other.broken().get(place)), rank(one.broken().get(place)));
        if (difference != 0) {
          return difference;
        }
      }
      int more = Integer.compare(one.broken().size(), other.broken().size());
      return more != 0 ? more : Integer.compare(one.plan().day(), other.plan().day());
    };
  }

  private int rank(CallRule rule) {
    return rules.entry(rule).rank();
  }

  private void weigh(Plan plan) {
    List<CallRule> broken = new ArrayList<>();
    onDay(plan.day(), broken);
    switch (plan.choice()) {
      case MOW_AND_COLLECT -> {
        takes(tallestMm(plan.day()), prospect.cutHeightMm(), broken);
        broken.add(CallRule.CARRY);
      }
      case RAISE_AND_CUT_TWICE -> twice(plan, broken);
      default -> {
        whole(plan.day(), broken);
        double heightMm = tallestMm(plan.day());
        takes(heightMm, prospect.cutHeightMm(), broken);
        falls(heightMm - prospect.cutHeightMm(), prospect.wet(plan.day()), broken);
      }
    }
    plans.add(
        new Weighed(
            plan, broken.stream().distinct().sorted(Comparator.comparingInt(this::rank)).toList()));
  }

  /** What speaks against mowing on a day, whatever becomes of the clippings. */
  private void onDay(int day, List<CallRule> broken) {
    add(!prospect.mowingSeason().contains(prospect.date(day)), CallRule.SEASON, broken);
    add(
        prospect.lengthMm(day, prospect.cutHeightMm()) < rules.threshold(CallRule.LEAST_GROWTH),
        CallRule.LEAST_GROWTH,
        broken);
    add(prospect.frost(day), CallRule.FROST, broken);
    add(prospect.saturated(day), CallRule.SATURATED, broken);
    add(prospect.soft(day), CallRule.SOFT_GROUND, broken);
    add(prospect.hot(day), CallRule.HEAT, broken);
    add(!prospect.due(day), CallRule.DUE, broken);
    add(prospect.wet(day), CallRule.WET, broken);
    add(day > 0, CallRule.DELAY, broken);
  }

  /** What speaks against returning all that stands above the cut height, in one cut or in two. */
  private void whole(int day, List<CallRule> broken) {
    double heightMm = tallestMm(day);
    double lengthMm = Math.max(0, heightMm - prospect.cutHeightMm());
    double index = prospect.clumpIndex(prospect.dryGPerM2(lengthMm), prospect.wet(day));
    add(
        Prospect.takenFraction(heightMm, prospect.cutHeightMm()) > rules.threshold(CallRule.HALF),
        CallRule.HALF,
        broken);
    add(index > rules.threshold(CallRule.CLUMPS_HEAVY), CallRule.CLUMPS_HEAVY, broken);
  }

  private void takes(double heightMm, double toMm, List<CallRule> broken) {
    boolean tooMuch = Prospect.takenFraction(heightMm, toMm) > prospect.thirdAndTolerance();
    add(tooMuch, CallRule.ONE_THIRD, broken);
  }

  private void falls(double lengthMm, boolean wet, List<CallRule> broken) {
    double length = Math.max(0, lengthMm);
    add(length > rules.threshold(CallRule.LENGTH), CallRule.LENGTH, broken);
    add(
        prospect.clumpIndex(prospect.dryGPerM2(length), wet) > rules.threshold(CallRule.CLUMPS),
        CallRule.CLUMPS,
        broken);
  }

  private void twice(Plan plan, List<CallRule> broken) {
    int day = plan.day();
    double heightMm = tallestMm(day);
    double firstMm = plan.cuts().get(0).toMm();
    double grownMm = firstMm + tallestMm(day + daysBetween()) - heightMm;
    whole(day, broken);
    takes(heightMm, firstMm, broken);
    takes(grownMm, prospect.cutHeightMm(), broken);
    falls(heightMm - firstMm, prospect.wet(day), broken);
    falls(grownMm - prospect.cutHeightMm(), prospect.wet(day + daysBetween()), broken);
    broken.add(CallRule.SECOND_CUT);
  }

  /**
   * Height of the first of two cuts that take the same share: with g grown between them, x (x + g)
   * = H Hc; in steps of a mower's deck. The cut height where so little stands above it that two
   * cuts make no sense.
   */
  private double raisedMm(int day) {
    double heightMm = tallestMm(day);
    double cutHeightMm = prospect.cutHeightMm();
    if (heightMm - cutHeightMm < 2 * rules.threshold(CallRule.LEAST_GROWTH)) {
      return cutHeightMm;
    }
    double grownMm = tallestMm(day + daysBetween()) - heightMm;
    double equalMm = (Math.sqrt(grownMm * grownMm + 4 * heightMm * cutHeightMm) - grownMm) / 2;
    double stepMm = cutHeightMm < DECK_STEP_BELOW_MM ? 1 : DECK_STEP_MM;
    double steppedMm = stepMm * Math.round(equalMm / stepMm);
    return steppedMm > cutHeightMm && steppedMm < heightMm ? steppedMm : equalMm;
  }

  /** Greatest height up to a day, mm: waiting until drought withers the grass cures nothing. */
  private double tallestMm(int day) {
    double tallestMm = 0;
    for (int before = 0; before <= day; before++) {
      tallestMm = Math.max(tallestMm, prospect.heightMm(before));
    }
    return tallestMm;
  }

  private int daysBetween() {
    return (int) Math.round(rules.threshold(CallRule.CUT_TWICE_DAYS));
  }

  private static void add(boolean broken, CallRule rule, List<CallRule> rules) {
    if (broken) {
      rules.add(rule);
    }
  }
}
