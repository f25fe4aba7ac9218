package leafturn.advice.call;

import static leafturn.advice.call.ReasonWords.taken;
import static leafturn.advice.call.Words.percent;
import static leafturn.advice.call.Words.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.Weighing.Weighed;
import org.jspecify.annotations.Nullable;

/** Puts the rules that decided a call, and those it keeps, into words. */
final class ReasonWriter {
  /** Rules that only break ties between choices; as reasons they would be noise. */
  private static final Set<CallRule> TIE_BREAKERS =
      EnumSet.of(CallRule.CARRY, CallRule.SECOND_CUT, CallRule.SECOND_PASS, CallRule.DELAY);

  private final Prospect prospect;
  private final CallRules rules;
  private final Reader reader;
  private final DayNames days;
  private final ReasonWords words;

  ReasonWriter(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
    this.words = new ReasonWords(prospect);
  }

  /**
   * Reasons for a plan. Where it is to mow and return today and takes no more than a third, what it
   * keeps comes first; else what speaks against mowing and returning today.
   */
  List<Reason> of(Weighed best, Weighed returnToday, @Nullable Outcome outcome) {
    Set<CallRule> told = EnumSet.copyOf(TIE_BREAKERS);
    Plan plan = best.plan();
    List<Reason> against = against(best, returnToday, told);
    List<Reason> kept = kept(plan, told, outcome);
    boolean keptFirst = against.isEmpty() || keptFirst(plan, returnToday);
    List<Reason> reasons = new ArrayList<>(keptFirst ? kept : against);
    reasons.addAll(keptFirst ? against : kept);
    aside(told, reasons);
    return reasons;
  }

  /** What speaks against mowing and returning today, and against the plan itself. */
  private List<Reason> against(Weighed best, Weighed returnToday, Set<CallRule> told) {
    List<Reason> against = new ArrayList<>();
    Plan plan = best.plan();
    held(plan, returnToday, told, against);
    if (plan.day() == 0 && prospect.laterToday()) {
      CallRule cause = prospect.frostPossible(0) ? CallRule.FROST : CallRule.WET;
      told(List.of(cause), 0, true, told, against);
    }
    if (prospect.known().frostAt().isPresent()) {
      told(List.of(CallRule.FROST), 0, true, told, against);
    }
    if (plan.choice() == Choice.CHOP_LEAVES_AND_RETURN) {
      told(List.of(CallRule.LEAF_COVER), plan.day(), false, told, against);
    }
    told(returnToday.broken(), 0, true, told, against);
    told(best.broken(), plan.day(), false, told, against);
    return against;
  }

  private List<Reason> kept(Plan plan, Set<CallRule> told, @Nullable Outcome outcome) {
    List<Reason> kept = new ArrayList<>();
    if (plan.inSteps()) {
      kept.add(twoCuts(plan));
    } else if (plan.choice() != Choice.LOWER_ONCE_AND_COLLECT) {
      told(List.of(CallRule.ONE_THIRD), plan.day(), false, told, kept);
    }
    if (plan.returned()) {
      returned(plan, told, outcome, kept);
    }
    return kept;
  }

  private static boolean keptFirst(Plan plan, Weighed returnToday) {
    return plan.equals(returnToday.plan()) && !returnToday.breaks(CallRule.ONE_THIRD);
  }

  /** A hold that keeps on the lawn what the other rules would have collected decides. */
  private void held(Plan plan, Weighed returnToday, Set<CallRule> told, List<Reason> reasons) {
    boolean decides =
        returnToday.breaks(CallRule.ONE_THIRD)
            || returnToday.breaks(CallRule.CLUMPS)
            || returnToday.breaks(CallRule.WET_RETURN)
            || returnToday.breaks(CallRule.SEED_HEADS);
    if (decides && prospect.known().hold(prospect.date(plan.day())).isPresent()) {
      told(List.of(CallRule.HELD), plan.day(), false, told, reasons);
    }
  }

  /** What was seen or done and decides nothing, but should be known. */
  private void aside(Set<CallRule> told, List<Reason> reasons) {
    Known known = prospect.known();
    if (known.hold(prospect.today().on()).isPresent()) {
      told(List.of(CallRule.HELD), 0, false, told, reasons);
    }
    if (known.newlySeeded()) {
      told(List.of(CallRule.SEEDLINGS), 0, false, told, reasons);
    }
    if (known.dryFeed().isPresent() && !told.contains(CallRule.FEED_DRY)) {
      told(List.of(CallRule.FEED_COLLECTED), 0, false, told, reasons);
    }
    if (known.leafCoverFraction() > 0) {
      told(List.of(CallRule.LEAF_COVER), 0, false, told, reasons);
    }
    if (known.seen(Sight.OWN_STALKS)) {
      reasons.add(ownStalks());
    }
    if (known.disease().isPresent()) {
      told(List.of(CallRule.DISEASE), 0, false, told, reasons);
    }
  }

  private Reason ownStalks() {
    boolean looked = prospect.known().seedHeads().basis() == SeedHeads.Basis.NOT_SEEN;
    return Reason.of(
        rules.entry(CallRule.SEED_HEADS),
        "The lawn's own stalks",
        say(
            "are no reason to %s: they sow nothing unwanted. A sharp blade cuts them clean.%s",
            reader.take(),
            looked
                ? " No annual bluegrass was seen, and that counts for more than the warmth of the year."
                : ""),
        "no limit",
        false);
  }

  private void told(
      List<CallRule> broken, int day, boolean against, Set<CallRule> told, List<Reason> reasons) {
    for (CallRule rule : broken) {
      boolean toldByWet = rule == CallRule.WET_RETURN && broken.contains(CallRule.WET);
      if (told.add(rule) && !toldByWet) {
        reasons.add(words.reason(rule, day, against));
      }
      if (rule == CallRule.HALF) {
        told.add(CallRule.ONE_THIRD);
      } else if (rule == CallRule.CLUMPS_HEAVY) {
        told.add(CallRule.CLUMPS);
      } else if (rule == CallRule.FEED_DRY || rule == CallRule.FEED_COLLECTED) {
        told.add(CallRule.FEED_DRY);
        told.add(CallRule.FEED_COLLECTED);
      }
    }
  }

  private void returned(
      Plan plan, Set<CallRule> told, @Nullable Outcome outcome, List<Reason> reasons) {
    if (!plan.inSteps()) {
      told(List.of(CallRule.CLUMPS), plan.day(), false, told, reasons);
    }
    double lengthMm = prospect.lengthMm(plan.day(), plan.cuts().get(0).toMm());
    if (Math.round(lengthMm) > rules.threshold(CallRule.SHORT_PIECES)) {
      reasons.add(shortPieces(lengthMm));
    }
    if (outcome != null) {
      if (outcome.daysToHalf() != null) {
        reasons.add(breakdown(outcome.daysToHalf()));
      }
      reasons.add(nitrogen(outcome));
    }
  }

  /** The reasons for leaving the lawn alone. */
  List<Reason> leave(CallRule rule) {
    Set<CallRule> told = EnumSet.of(rule);
    List<Reason> reasons = new ArrayList<>(List.of(words.reason(rule, 0, true)));
    aside(told, reasons);
    return reasons;
  }

  private Reason twoCuts(Plan plan) {
    List<String> shares = new ArrayList<>();
    List<String> heights = new ArrayList<>();
    double beforeMm = prospect.heightMm(plan.day());
    for (int cut = 0; cut < plan.cuts().size(); cut++) {
      Plan.PlannedCut one = plan.cuts().get(cut);
      shares.add(taken(beforeMm, one.toMm()));
      heights.add(say("to %s %s", reader.height(one.toMm()), days.when(one.day())));
      if (cut + 1 < plan.cuts().size()) {
        int next = plan.cuts().get(cut + 1).day();
        beforeMm = one.toMm() + prospect.heightMm(next) - prospect.heightMm(one.day());
      }
    }
    return Reason.of(
        rules.entry(CallRule.ONE_THIRD),
        String.join(" and ", shares) + " of the height",
        say(
            "come off in %s cuts: %s.",
            shares.size() == 2 ? "two" : "three", String.join(", ", heights)),
        words.third(),
        false);
  }

  private Reason shortPieces(double lengthMm) {
    double third = prospect.cutHeightMm() / 2;
    return Reason.of(
        rules.entry(CallRule.SHORT_PIECES),
        "Pieces up to " + reader.height(lengthMm),
        say(
            "A rule of thumb would %s pieces longer than %s. At a cut height of %s a third of the height alone is %s, so that rule does not decide here.",
            reader.take(),
            reader.height(rules.threshold(CallRule.SHORT_PIECES)),
            reader.height(prospect.cutHeightMm()),
            reader.height(third)),
        "short below " + reader.height(rules.threshold(CallRule.SHORT_PIECES)),
        false);
  }

  private Reason breakdown(Spread half) {
    String low = say("%.0f", half.low());
    String high = say("%.0f", half.high());
    String range =
        low.equals(high)
            ? "about the same in all possible seasons."
            : say("between %s and %s days in eight of ten possible seasons.", low, high);
    return Reason.of(
        rules.entry(CallRule.BREAKDOWN),
        say("Half broken down in %.0f days", half.middle()),
        "gone to the soil and the air, " + range,
        "no limit",
        false);
  }

  private Reason nitrogen(Outcome outcome) {
    Spread share = outcome.nitrogenShareOfYearsFeed();
    return Reason.of(
        rules.entry(CallRule.NITROGEN),
        reader.onArea(outcome.nitrogenG().middle(), "nitrogen"),
        say(
            "in the clippings%s, about a third of which feeds the grass again.",
            share == null ? "" : say(", %s of the year's feed", percent(share.middle()))),
        "no limit",
        false);
  }
}
