package leafturn.advice.call;

import static leafturn.advice.call.Words.percent;
import static leafturn.advice.call.Words.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.Weighing.Weighed;
import org.jspecify.annotations.Nullable;

/** Puts the rules that decided a call, and those it keeps, into words. */
final class ReasonWriter {
  /** Rules that only break ties between choices; as reasons they would be noise. */
  private static final Set<CallRule> TIE_BREAKERS =
      EnumSet.of(CallRule.CARRY, CallRule.SECOND_CUT, CallRule.SECOND_PASS, CallRule.DELAY);

  /** Rules of which nothing is left to say once a heavier one of their kind is told. */
  private static final Map<CallRule, Set<CallRule>> TOLD_WITH =
      Map.of(
          CallRule.HALF, Set.of(CallRule.ONE_THIRD),
          CallRule.CLUMPS_HEAVY, Set.of(CallRule.CLUMPS),
          CallRule.FEED_DRY, Set.of(CallRule.FEED_COLLECTED),
          CallRule.FEED_COLLECTED, Set.of(CallRule.FEED_DRY));

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
  List<Reason> of(Weighed best, Returned returned, @Nullable Outcome outcome) {
    Set<CallRule> told = EnumSet.copyOf(TIE_BREAKERS);
    Plan plan = best.plan();
    Weighed returnToday = returned.today();
    List<Reason> against = against(best, returned, told);
    List<Reason> kept = kept(plan, told, outcome);
    boolean keptFirst = against.isEmpty() || keptFirst(plan, returnToday);
    List<Reason> reasons = new ArrayList<>(keptFirst ? kept : against);
    reasons.addAll(keptFirst ? against : kept);
    aside(plan, told, reasons);
    return reasons;
  }

  /** What speaks against mowing and returning today, and against the plan itself. */
  private List<Reason> against(Weighed best, Returned returned, Set<CallRule> told) {
    List<Reason> against = new ArrayList<>();
    Plan plan = best.plan();
    Weighed returnToday = returned.today();
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
    List<CallRule> thatDay = returned.decidedThatDay(best, TOLD_WITH);
    for (CallRule rule : returnToday.broken()) {
      int day = thatDay.contains(rule) ? plan.day() : 0;
      if (toldByHeavier(rule, thatDay)
          || (rule == CallRule.WET_RETURN && returnToday.breaks(CallRule.WET))) {
        told.add(rule);
      } else if (!returned.onlyWetNow(rule, best, prospect)) {
        told(List.of(rule), day, true, told, against);
      } else if (best.breaks(rule)) {
        told(List.of(rule), plan.day(), true, told, against);
      }
    }
    told(thatDay, plan.day(), true, told, against);
    told(best.broken(), plan.day(), false, told, against);
    return against;
  }

  /** True where a heavier rule of its kind is told, of the plan's day. */
  private boolean toldByHeavier(CallRule rule, List<CallRule> thatDay) {
    return thatDay.stream()
        .filter(other -> rules.entry(other).rank() < rules.entry(rule).rank())
        .anyMatch(other -> TOLD_WITH.getOrDefault(other, Set.of()).contains(rule));
  }

  private List<Reason> kept(Plan plan, Set<CallRule> told, @Nullable Outcome outcome) {
    List<Reason> kept = new ArrayList<>();
    if (plan.inSteps()) {
      kept.add(steps(plan));
    } else if (plan.choice() != Choice.LOWER_ONCE_AND_COLLECT) {
      told(List.of(CallRule.ONE_THIRD), plan.day(), false, told, kept);
    }
    if (intervalUp(plan) || (plan.day() == 0 && prospect.due().aheadOfWet())) {
      told(List.of(CallRule.DUE), plan.day(), false, told, kept);
    }
    if (plan.returned()) {
      returned(plan, told, outcome, kept);
    }
    return kept;
  }

  /** True when a lawn mown by days is mown because they are over. */
  private boolean intervalUp(Plan plan) {
    return !prospect.mowing().byOneThirdRule()
        && !prospect.known().newlySeeded()
        && prospect.today().daysSinceMowing() + plan.day() >= prospect.mowing().everyDays();
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
    if (decides && prospect.known().holds(prospect.date(plan.day())).any()) {
      told(List.of(CallRule.HELD), plan.day(), false, told, reasons);
    }
  }

  /** What was seen or done and decides nothing, but should be known. */
  private void aside(Plan plan, Set<CallRule> told, List<Reason> reasons) {
    Known known = prospect.known();
    Optional<Reason> over = new HeldCuts(prospect).reason(plan);
    over.ifPresent(reasons::add);
    if (over.isEmpty() && known.holds(prospect.today().on()).any()) {
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
      reasons.add(new OwnSeedWords(prospect).stalks());
    }
    if (known.inSeed() && !prospect.foreignSeed()) {
      reasons.add(new OwnSeedWords(prospect).seedHeads());
    }
    if (known.disease().isPresent()) {
      told(List.of(CallRule.DISEASE), 0, false, told, reasons);
    }
  }

  private void told(
      List<CallRule> broken, int day, boolean against, Set<CallRule> told, List<Reason> reasons) {
    for (CallRule rule : broken) {
      boolean toldByWet = rule == CallRule.WET_RETURN && broken.contains(CallRule.WET);
      if (told.add(rule) && !toldByWet) {
        reasons.add(words.reason(rule, day, against));
      }
      told.addAll(TOLD_WITH.getOrDefault(rule, Set.of()));
    }
  }

  private void returned(
      Plan plan, Set<CallRule> told, @Nullable Outcome outcome, List<Reason> reasons) {
    if (!plan.inSteps()) {
      told(List.of(CallRule.CLUMPS), plan.day(), false, told, reasons);
    }
    double cutMm = prospect.lengthMm(plan.day(), plan.cuts().get(0).toMm());
    double lengthMm = prospect.passes().pieceMm(cutMm, false);
    boolean shorter = Math.round(lengthMm) <= rules.threshold(CallRule.SHORT_PIECES);
    if (!shorter && !told.contains(CallRule.LENGTH)) {
      reasons.add(shortPieces(lengthMm));
    }
    if (outcome != null) {
      if (outcome.daysToHalf() != null) {
        reasons.add(breakdown(outcome.daysToHalf()));
      }
      reasons.add(nitrogen(outcome));
    }
  }

  /**
   * The reasons for leaving the lawn alone.
   *
   * @param day the day that the rule speaks against
   */
  List<Reason> leave(CallRule rule, int day) {
    Set<CallRule> told = EnumSet.of(rule);
    List<Reason> reasons = new ArrayList<>(List.of(words.reason(rule, day, true)));
    aside(Plan.unmown(), told, reasons);
    return reasons;
  }

  private Reason steps(Plan plan) {
    List<String> shares = plan.takenFractions(prospect).stream().map(Words::percent).toList();
    List<String> heights =
        plan.cuts().stream()
            .map(cut -> say("to %s %s", reader.height(cut.toMm()), days.when(cut.day())))
            .toList();
    boolean tooMuch = plan.largestTakenFraction(prospect) > prospect.thirdAndTolerance();
    return Reason.of(
        rules.entry(CallRule.ONE_THIRD),
        Words.list(shares) + " of the height",
        say(
            "come off in %s cuts: %s.%s",
            Words.count(shares.size()), String.join(", ", heights), tooMuch ? breach(plan) : ""),
        words.third(),
        tooMuch);
  }

  /** By how much the steps break the one-third rule, and why they are not more. */
  private String breach(Plan plan) {
    return say(
        " The largest takes %s, where %s is the limit. %s (common practice, no source); it looks pale until new leaf has grown.",
        percent(plan.largestTakenFraction(prospect)),
        rules.third(),
        plan.breaksByDeck(prospect)
            ? say(
                "No usual deck cuts above %s, so grass this long is first cut at that",
                reader.height(DeckHeights.HIGHEST_MM))
            : plan.cuts().size() < rules.mostCuts()
                ? "No gentler way down was found for the days on which somebody can come"
                : say(
                    "To keep within it would take more cuts, and grass this long is usually brought down in %s at most",
                    Words.count(rules.mostCuts())));
  }

  private Reason shortPieces(double lengthMm) {
    double limit = rules.threshold(CallRule.ONE_THIRD);
    double thirdMm = prospect.cutHeightMm() * limit / (1 - limit);
    double shortMm = rules.threshold(CallRule.SHORT_PIECES);
    return Reason.of(
        rules.entry(CallRule.SHORT_PIECES),
        "Pieces up to " + reader.height(lengthMm),
        say(
            "A rule of thumb would %s pieces longer than %s. %s",
            reader.take(),
            reader.height(shortMm),
            thirdMm > shortMm
                ? say(
                    "At a cut height of %s %s of the height alone is %s, so that rule does not decide here.",
                    reader.height(prospect.cutHeightMm()),
                    prospect.rules().third(),
                    reader.height(thirdMm))
                : "The share of the height, the load and dry leaves decide here."),
        "short below " + reader.height(shortMm),
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
        "Half broken down in " + Words.days(Math.round(half.middle())),
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
