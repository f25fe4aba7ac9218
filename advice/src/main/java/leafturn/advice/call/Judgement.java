package leafturn.advice.call;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import leafturn.advice.call.Plan.PlannedCut;

/** Says which rules a plan breaks. */
final class Judgement {
  /**
   * So long after the last safe day a few dry hours are no longer worth it, days; our judgement.
   */
  private static final int LATE_DAYS = 3;

  private final Prospect prospect;
  private final CallRules rules;
  private final Known known;
  private final Due due;
  private final WashingIn washingIn;
  private final boolean greening;
  private final boolean straw;
  private final boolean seedHeads;
  private final Map<Integer, Set<CallRule>> ofDay = new HashMap<>();

  Judgement(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.known = prospect.known();
    this.due = prospect.due();
    this.washingIn = new WashingIn(prospect);
    GreenUp greenUp = new GreenUp(prospect);
    this.greening = greenUp.greening();
    this.straw = greenUp.toBeLowered();
    this.seedHeads = prospect.foreignSeed();
  }

  /** The rules a plan breaks, heaviest first. */
  List<CallRule> broken(Plan plan) {
    Set<CallRule> broken = EnumSet.noneOf(CallRule.class);
    broken.addAll(ofDay.computeIfAbsent(plan.day(), this::onDay));
    heights(plan, broken);
    clippings(plan, broken);
    known(plan, broken);
    rightNow(plan, broken);
    work(plan, broken);
    List<CallRule> ordered = new ArrayList<>(broken);
    ordered.sort(Comparator.comparingInt(rule -> rules.entry(rule).rank()));
    return ordered;
  }

  /** What speaks against mowing on a day, whatever becomes of the clippings. */
  private Set<CallRule> onDay(int day) {
    Set<CallRule> broken = EnumSet.noneOf(CallRule.class);
    boolean littleToCut =
        prospect.lengthMm(day, prospect.cutHeightMm()) < rules.threshold(CallRule.LEAST_GROWTH);
    boolean wet = prospect.wet(day);
    add(!prospect.mowingSeason().contains(prospect.date(day)), CallRule.SEASON, broken);
    add(!prospect.visit(day), CallRule.VISIT, broken);
    add(known.labelWait(prospect.date(day)).isPresent(), CallRule.LABEL_WAIT, broken);
    add(known.dormant().or(known::wilting).isPresent(), CallRule.DORMANT, broken);
    add(littleToCut && known.leafCoverFraction() == 0, CallRule.LEAST_GROWTH, broken);
    add(prospect.frost(day), CallRule.FROST, broken);
    add(known.steep() && wet, CallRule.WET_SLOPE, broken);
    add(prospect.saturated(day), CallRule.SATURATED, broken);
    add(prospect.soft(day), CallRule.SOFT_GROUND, broken);
    add(prospect.hot(day), CallRule.HEAT, broken);
    boolean otherCause = known.leafCoverFraction() > 0 || greening;
    add(!due.on(day) && !otherCause, CallRule.DUE, broken);
    add(wet, CallRule.WET, broken);
    add(day > 0, CallRule.DELAY, broken);
    return broken;
  }

  /** To mow and return today means now, even where the leaves will be dry later on. */
  private void rightNow(Plan plan, Set<CallRule> broken) {
    if (plan.day() == 0 && plan.choice() == Choice.MOW_AND_RETURN && prospect.laterToday()) {
      add(prospect.frostPossible(0), CallRule.FROST, broken);
      add(prospect.wetNow(), CallRule.WET_RETURN, broken);
      add(prospect.wetNow(), CallRule.WET, broken);
    }
  }

  /** What each cut takes. */
  private void heights(Plan plan, Set<CallRule> broken) {
    if (plan.choice() == Choice.LOWER_ONCE_AND_COLLECT) {
      return;
    }
    double taken = plan.largestTakenFraction(prospect);
    boolean late = plan.inSteps() && missesSafeVisit(plan.day());
    add(taken > prospect.thirdAndTolerance() || late, CallRule.ONE_THIRD, broken);
    add(taken > rules.threshold(CallRule.HALF) || outgrown(plan.day()), CallRule.HALF, broken);
  }

  /** The first day up to one on which somebody can come and no rule forbids mowing, if any. */
  OptionalInt firstMowable(int lastDay) {
    return IntStream.rangeClosed(0, lastDay).filter(this::mowable).findFirst();
  }

  private boolean mowable(int day) {
    return Collections.disjoint(ofDay.computeIfAbsent(day, this::onDay), Weighing.NEVER_MOWN);
  }

  /** True of a later visit by which so much has grown that more than half would come off. */
  private boolean outgrown(int day) {
    return !known.facts().visits().anyDay()
        && firstMowable(day - 1).isPresent()
        && Prospect.takenFraction(prospect.tallestMm(day), prospect.cutHeightMm())
            > rules.threshold(CallRule.HALF);
  }

  /** True of a day long after the last safe one, where somebody could come and mow before. */
  private boolean missesSafeVisit(int day) {
    int lastSafe = due.lastSafeDay();
    return day > lastSafe + LATE_DAYS && firstMowable(lastSafe).isPresent();
  }

  /** What lies on the turf afterwards. */
  private void clippings(Plan plan, Set<CallRule> broken) {
    double heightMm = prospect.tallestMm(plan.day());
    double beforeMm = heightMm;
    for (int cut = 0; cut < plan.cuts().size(); cut++) {
      PlannedCut one = plan.cuts().get(cut);
      if (one.returnedShare() > 0) {
        returned(plan, one, Math.max(0, beforeMm - one.toMm()), broken);
      }
      beforeMm = one.toMm() + plan.grownMm(prospect, cut);
    }
    if (plan.cuts().get(0).returnedShare() > 0) {
      whole(plan, heightMm, broken);
    }
  }

  /** What speaks against returning all that stands above the cut height, in one cut or in more. */
  private void whole(Plan plan, double heightMm, Set<CallRule> broken) {
    double cutHeightMm = prospect.cutHeightMm();
    double taken = Prospect.takenFraction(heightMm, cutHeightMm);
    double dry = prospect.dryGPerM2(Math.max(0, heightMm - cutHeightMm));
    double index = index(plan, dry, prospect.wet(plan.day()));
    boolean gap = known.daysUnmown().orElse(0L) + plan.day() >= rules.threshold(CallRule.STEMMY);
    add(taken > rules.threshold(CallRule.HALF), CallRule.HALF, broken);
    add(index > rules.threshold(CallRule.CLUMPS_HEAVY), CallRule.CLUMPS_HEAVY, broken);
    add(gap && taken > prospect.thirdAndTolerance(), CallRule.STEMMY, broken);
  }

  private void returned(Plan plan, PlannedCut cut, double lengthMm, Set<CallRule> broken) {
    // A later step waits for dry leaves: whether its day is wet, nobody knows yet.
    boolean wet = cut.day() == plan.day() && prospect.wet(cut.day());
    double dry = prospect.dryGPerM2(lengthMm);
    boolean longPieces = pieceMm(plan, lengthMm) > rules.threshold(CallRule.LENGTH);
    add(longPieces, CallRule.LENGTH, broken);
    add(index(plan, dry, wet) > rules.threshold(CallRule.CLUMPS), CallRule.CLUMPS, broken);
    add(wet, CallRule.WET_RETURN, broken);
    boolean seen =
        wet
            || dry > rules.threshold(CallRule.NO_CLIPPINGS)
            || lengthMm > rules.threshold(CallRule.SHORT_PIECES);
    add(seen && known.facts().wishes().noClippings(), CallRule.NO_CLIPPINGS, broken);
    add(seedHeads, CallRule.SEED_HEADS, broken);
  }

  private double pieceMm(Plan plan, double lengthMm) {
    return prospect.passes().pieceMm(lengthMm, plan.choice() == Choice.DOUBLE_PASS);
  }

  private double index(Plan plan, double dryGPerM2, boolean wet) {
    return prospect.clumpIndex(dryGPerM2, wet, plan.choice() == Choice.DOUBLE_PASS);
  }

  /** What people know that speaks against a plan. */
  private void known(Plan plan, Set<CallRule> broken) {
    boolean collects = plan.cuts().stream().anyMatch(cut -> cut.returnedShare() == 0);
    boolean leaves = known.leafCoverFraction() > 0;
    boolean dry = washingIn.dryOn(plan.day());
    // Where feed is watered in, a plan to wait is told as that choice.
    boolean untold = plan.choice() == Choice.WAIT_AND_RETURN && washingIn.waterDay().isPresent();
    boolean toBeLookedAt = washingIn.toBeLookedAt().isPresent();
    boolean chops = plan.choice() == Choice.CHOP_LEAVES_AND_RETURN;
    add(collects && known.holds(prospect.date(plan.day())).any(), CallRule.HELD, broken);
    add(collects && known.newlySeeded(), CallRule.SEEDLINGS, broken);
    add(collects && dry, CallRule.FEED_COLLECTED, broken);
    add((dry && !toBeLookedAt) || untold, CallRule.FEED_DRY, broken);
    boolean hidden = known.leafCoverFraction() > rules.threshold(CallRule.LEAF_COVER);
    add(leaves && !collects && (hidden || !chops), CallRule.LEAF_COVER, broken);
    add(straw && plan.choice() != Choice.LOWER_ONCE_AND_COLLECT, CallRule.GREEN_UP, broken);
  }

  private void work(Plan plan, Set<CallRule> broken) {
    add(plan.cuts().stream().anyMatch(c -> c.returnedShare() == 0), CallRule.CARRY, broken);
    add(plan.inSteps(), CallRule.SECOND_CUT, broken);
    add(plan.choice() == Choice.DOUBLE_PASS, CallRule.SECOND_PASS, broken);
  }

  private static void add(boolean broken, CallRule rule, Set<CallRule> rules) {
    if (broken) {
      rules.add(rule);
    }
  }
}
