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
      EnumSet.of(CallRule.CARRY, CallRule.SECOND_CUT, CallRule.DELAY);

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
    List<Reason> against = new ArrayList<>();
    told(returnToday.broken(), 0, true, told, against);
    Plan plan = best.plan();
    told(best.broken(), plan.day(), false, told, against);
    List<Reason> kept = new ArrayList<>();
    if (plan.choice() == Choice.RAISE_AND_CUT_TWICE) {
      kept.add(twoCuts(plan));
    } else {
      told(List.of(CallRule.ONE_THIRD), plan.day(), false, told, kept);
    }
    if (plan.returned()) {
      returned(plan, told, outcome, kept);
    }
    boolean keptFirst = plan.equals(returnToday.plan()) && !returnToday.breaks(CallRule.ONE_THIRD);
    List<Reason> reasons = new ArrayList<>(keptFirst ? kept : against);
    reasons.addAll(keptFirst ? against : kept);
    return reasons;
  }

  private void told(
      List<CallRule> broken, int day, boolean against, Set<CallRule> told, List<Reason> reasons) {
    for (CallRule rule : broken) {
      if (told.add(rule)) {
        reasons.add(words.reason(rule, day, against));
      }
      if (rule == CallRule.HALF) {
        told.add(CallRule.ONE_THIRD);
      } else if (rule == CallRule.CLUMPS_HEAVY) {
        told.add(CallRule.CLUMPS);
      }
    }
  }

  private void returned(
      Plan plan, Set<CallRule> told, @Nullable Outcome outcome, List<Reason> reasons) {
    if (plan.choice() != Choice.RAISE_AND_CUT_TWICE) {
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

  /** The reason for leaving the lawn alone. */
  Reason leave(CallRule rule) {
    return words.reason(rule, 0, true);
  }

  private Reason twoCuts(Plan plan) {
    Plan.PlannedCut first = plan.cuts().get(0);
    Plan.PlannedCut second = plan.cuts().get(1);
    double heightMm = prospect.heightMm(first.day());
    double regrownMm =
        first.toMm() + prospect.heightMm(second.day()) - prospect.heightMm(first.day());
    return words.written(
        CallRule.ONE_THIRD,
        say(
            "%s and %s of the height",
            taken(heightMm, first.toMm()), taken(regrownMm, second.toMm())),
        say(
            "come off in two cuts: to %s %s, to %s %s.",
            reader.height(first.toMm()),
            days.when(first.day()),
            reader.height(second.toMm()),
            days.when(second.day())),
        words.third(),
        false);
  }

  private Reason shortPieces(double lengthMm) {
    double third = prospect.cutHeightMm() / 2;
    return words.written(
        CallRule.SHORT_PIECES,
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
    return words.written(
        CallRule.BREAKDOWN,
        say("Half broken down in %.0f days", half.middle()),
        "gone to the soil and the air, " + range,
        "no limit",
        false);
  }

  private Reason nitrogen(Outcome outcome) {
    Spread share = outcome.nitrogenShareOfYearsFeed();
    return words.written(
        CallRule.NITROGEN,
        reader.onArea(outcome.nitrogenG().middle(), "nitrogen"),
        say(
            "in the clippings%s, about a third of which feeds the grass again.",
            share == null ? "" : say(", %s of the year's feed", percent(share.middle()))),
        "no limit",
        false);
  }
}
