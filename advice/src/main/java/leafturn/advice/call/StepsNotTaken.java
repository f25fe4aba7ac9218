package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import leafturn.advice.call.Weighing.Weighed;

/** Steps down from the day of one cut that takes more than the one-third rule lets off. */
record StepsNotTaken(Prospect prospect, Weighing weighing) {
  private static final Set<Choice> STEPS =
      EnumSet.of(Choice.RAISE_AND_CUT_TWICE, Choice.RAISE_AND_COLLECT);

  /** The best of a kind of steps that begin on the day of such a cut; empty beside any other. */
  Optional<Weighed> of(Choice kind, Weighed best) {
    Plan one = best.plan();
    boolean tooMuch =
        !one.inSteps()
            && one.choice() != Choice.LOWER_ONCE_AND_COLLECT
            && one.largestTakenFraction(prospect) > prospect.thirdAndTolerance();
    return tooMuch && STEPS.contains(kind)
        ? weighing.best(plan -> plan.choice() == kind && plan.day() == one.day())
        : Optional.empty();
  }

  /** Why the cut is not stepped down instead, where it could be. */
  Optional<Reason> reason(Weighed best) {
    return Stream.of(Choice.RAISE_AND_COLLECT, Choice.RAISE_AND_CUT_TWICE)
        .flatMap(kind -> of(kind, best).stream())
        .findFirst()
        .map(steps -> reason(best, steps.plan()));
  }

  private Reason reason(Weighed best, Plan steps) {
    DayNames days = new DayNames(prospect.today().on());
    double one = best.plan().largestTakenFraction(prospect);
    double most = steps.largestTakenFraction(prospect);
    return Reason.of(
        prospect.rules().entry(CallRule.SECOND_CUT),
        say("Not in %s steps", Words.count(steps.cuts().size())),
        say(
            "Cut to %s %s and to %s by %s, %s would come off, for it grows on in between: %s.",
            prospect.reader().height(steps.cuts().get(0).toMm()),
            days.when(steps.day()),
            prospect.reader().height(steps.last().toMm()),
            days.name(steps.last().day()),
            Words.list(steps.takenFractions(prospect).stream().map(Words::percent).toList()),
            Math.round(100 * most) > Math.round(100 * one)
                ? say("more at once than the %s of one cut", Words.percent(one))
                : say(
                    "hardly less at once than the %s of one cut, for %s mowings instead of one",
                    Words.percent(one), Words.count(steps.cuts().size()))),
        "limit " + prospect.rules().third(),
        false);
  }
}
