package leafturn.advice.call;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Weighs all plans by the ranked rules: the plan whose heaviest broken rule is lightest wins; then
 * the next one counts (of two that take too much at once the clearly gentler one), then fewer cuts,
 * fewer of them collected, and at last the earlier day.
 */
final class Weighing {
  /** Rules for which a lawn is not mown at all: where every plan breaks one, it is left alone. */
  static final Set<CallRule> NEVER_MOWN =
      EnumSet.of(
          CallRule.SEASON,
          CallRule.VISIT,
          CallRule.LABEL_WAIT,
          CallRule.DORMANT,
          CallRule.FROST,
          CallRule.WET_SLOPE,
          CallRule.SATURATED,
          CallRule.SOFT_GROUND,
          CallRule.HEAT);

  /** Shares of the height above the limit that lie so near the smallest count as the same. */
  private static final double SHARE_BAND_FRACTION = 0.05;

  /**
   * @param broken rules the plan breaks, heaviest first
   * @param tooMuch how far its largest cut is above the smallest of those that break the one-third
   *     rule, or the grass has grown on by its day, in bands; 0 where it keeps to the rule
   */
  record Weighed(Plan plan, List<CallRule> broken, int tooMuch) {
    boolean breaks(CallRule rule) {
      return broken.contains(rule);
    }
  }

  private final Prospect prospect;
  private final CallRules rules;
  private final Judgement judgement;
  private final List<Weighed> plans;

  Weighing(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.judgement = new Judgement(prospect);
    List<Plan> all = new Plans(prospect).all();
    double least =
        all.stream()
            .mapToDouble(plan -> plan.largestTakenFraction(prospect))
            .filter(taken -> taken > prospect.thirdAndTolerance())
            .min()
            .orElse(1);
    this.plans =
        all.stream()
            .map(plan -> new Weighed(plan, judgement.broken(plan), tooMuch(plan, least)))
            .toList();
  }

  private int tooMuch(Plan plan, double leastTakenFraction) {
    double above = plan.largestTakenFraction(prospect) - leastTakenFraction;
    return (int) Math.max(0, Math.max(above, grownOnFraction(plan)) / SHARE_BAND_FRACTION);
  }

  /**
   * What comes off more on a plan's day than at the first visit on which the lawn may be mown,
   * where somebody comes on some days only: steps from a later visit take no more at once, but the
   * grass stands longer until then.
   */
  private double grownOnFraction(Plan plan) {
    if (prospect.known().facts().visits().anyDay()) {
      return 0;
    }
    OptionalInt first = judgement.firstMowable(plan.day());
    return first.isEmpty() ? 0 : whole(plan.day()) - whole(first.getAsInt());
  }

  private double whole(int day) {
    return Prospect.takenFraction(prospect.tallestMm(day), prospect.cutHeightMm());
  }

  /** The rule for which the lawn should be left alone, if there is one. */
  Optional<CallRule> leave() {
    if (always(CallRule.SEASON)) {
      return Optional.of(CallRule.SEASON);
    }
    if (prospect.known().dormant().or(prospect.known()::wilting).isPresent()) {
      return Optional.of(CallRule.DORMANT);
    }
    if (strawWaits()) {
      return Optional.of(CallRule.GREEN_UP);
    }
    if (atRest()) {
      return Optional.of(CallRule.HARDLY_GROWING);
    }
    if (possible().allMatch(p -> p.breaks(CallRule.LEAST_GROWTH) || p.breaks(CallRule.DUE))) {
      return Optional.of(always(CallRule.VISIT) ? CallRule.VISIT : CallRule.DUE);
    }
    return best().broken().stream().filter(NEVER_MOWN::contains).findFirst();
  }

  /** Straw that turns green is the new leaf's cover until frost is past: the one low cut waits. */
  private boolean strawWaits() {
    return new GreenUp(prospect).toBeLowered()
        && prospect.known().leafCoverFraction() == 0
        && possible().noneMatch(p -> p.plan().choice() == Choice.LOWER_ONCE_AND_COLLECT);
  }

  /** Dry ground on which nothing has grown, unless there is another cause to mow. */
  private boolean atRest() {
    boolean told =
        !prospect.standsIn()
            || !Double.isNaN(prospect.known().measuredGrowthMmPerDay(prospect.cutHeightMm()));
    return told
        && prospect.recentGrowthGPerM2() < rules.threshold(CallRule.HARDLY_GROWING)
        && prospect.today().soilWaterFraction() < rules.threshold(CallRule.DRY_SOIL)
        && !prospect.known().seen(Sight.GREENING_UP)
        && !prospect.known().newlySeeded()
        && prospect.known().leafCoverFraction() == 0;
  }

  private Stream<Weighed> possible() {
    return plans.stream().filter(plan -> !plan.breaks(CallRule.VISIT));
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

  /** A kind of plan on a day. */
  Weighed of(Choice choice, int day) {
    return best(plan -> plan.choice() == choice && plan.day() == day).orElseThrow();
  }

  /** The plan to mow on a day and return. */
  Weighed returnedOn(int day) {
    return of(day == 0 ? Choice.MOW_AND_RETURN : Choice.WAIT_AND_RETURN, day);
  }

  private Comparator<Weighed> byRank() {
    return ((Comparator<Weighed>) this::compareBroken)
        .thenComparingInt(weighed -> weighed.plan().cuts().size())
        .thenComparingInt(weighed -> weighed.plan().collectedCuts())
        .thenComparingInt(weighed -> weighed.plan().day());
  }

  private int compareBroken(Weighed one, Weighed other) {
    int common = Math.min(one.broken().size(), other.broken().size());
    for (int place = 0; place < common; place++) {
      CallRule rule = one.broken().get(place);
      int difference = Integer.compare(rank(other.broken().get(place)), rank(rule));
      if (difference == 0 && rule == CallRule.ONE_THIRD) {
        difference = Integer.compare(one.tooMuch(), other.tooMuch());
      }
      if (difference != 0) {
        return difference;
      }
    }
    return Integer.compare(one.broken().size(), other.broken().size());
  }

  private int rank(CallRule rule) {
    return rules.entry(rule).rank();
  }
}
