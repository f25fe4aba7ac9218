package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** The first dry day before a wet visit, on which the lawn could be mown if somebody came. */
record DryDayBefore(Prospect prospect) {
  /** What a dry day may break and still be better than a wet one. */
  private static final Set<CallRule> BROKEN =
      EnumSet.of(CallRule.VISIT, CallRule.DUE, CallRule.DELAY);

  /** What somebody who could come before would change; empty where that would be no better. */
  Optional<String> change(Plan plan) {
    if (!prospect.wet(plan.day()) || prospect.known().newlySeeded()) {
      return Optional.empty();
    }
    Judgement judgement = new Judgement(prospect);
    return IntStream.range(0, plan.day())
        .filter(day -> !(MowingHours.has(day) && prospect.todayUntold()))
        .filter(day -> fits(judgement.broken(returnedOn(day))))
        .mapToObj(this::words)
        .findFirst();
  }

  private static boolean fits(List<CallRule> broken) {
    return broken.contains(CallRule.VISIT) && BROKEN.containsAll(broken);
  }

  private Plan returnedOn(int day) {
    Choice choice = day == 0 ? Choice.WAIT_FOR_DRY_HOURS : Choice.WAIT_AND_RETURN;
    return Plan.oneReturned(choice, day, prospect.cutHeightMm());
  }

  private String words(int day) {
    Reader reader = prospect.reader();
    String hours =
        MowingHours.has(day)
            ? prospect
                .dryHours(day)
                .map(
                    span ->
                        say(
                            " in the dry hours, about %s to %s",
                            reader.clock(span.from()), reader.clock(span.to())))
                .orElse("")
            : ", if it is dry then";
    return say(
        "If somebody can come %s%s: mow and %s then.",
        new DayNames(prospect.today().on()).when(day), hours, reader.giveBackAlone());
  }
}
