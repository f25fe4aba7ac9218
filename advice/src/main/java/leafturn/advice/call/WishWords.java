package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.List;
import java.util.Optional;
import leafturn.advice.call.Option.Outcome;

/** What it costs to return and to collect, for a client who wants no clippings carried in. */
record WishWords(Prospect prospect, List<Option> options, Outcomes outcomes) {

  /**
   * The reason that sets both side by side, of one cut on the day that is advised.
   *
   * @param day days from today to that day; 0 where the lawn is left alone
   */
  Optional<Reason> reason(int day) {
    if (options.isEmpty()) {
      return Optional.empty();
    }
    Plan returned = Plan.mowAndReturn(day, prospect.cutHeightMm());
    Plan collected = Plan.mowAndCollect(day, prospect.cutHeightMm());
    return Optional.of(reason(day, outcome(returned), outcome(collected)));
  }

  private Reason reason(int day, Outcome returned, Outcome collected) {
    Reader reader = prospect.reader();
    return Reason.of(
        prospect.rules().entry(CallRule.NO_CLIPPINGS),
        "What each costs",
        say(
            "To %s %s leaves %s%s, and %s of nitrogen that feeds the grass again by about a third. To %s fills %s%s, and takes that away.",
            reader.giveBack(),
            new DayNames(prospect.today().on()).when(day),
            reader.load(returned.dryGPerM2().middle()),
            prospect.wet(day) ? ", wet" : "",
            reader.onArea(returned.nitrogenG().middle(), ""),
            reader.take(),
            bags(collected),
            minutes(returned, collected)),
        say(
            "seen from %s, or longer than %s, or wet",
            reader.loadLimit(prospect.rules().threshold(CallRule.NO_CLIPPINGS)),
            reader.height(prospect.rules().threshold(CallRule.SHORT_PIECES))),
        false);
  }

  /** Of an option that is shown, else over some of the possible seasons. */
  private Outcome outcome(Plan plan) {
    return options.stream()
        .filter(option -> option.choice() == plan.choice())
        .filter(option -> option.day().equals(prospect.date(plan.day())))
        .findFirst()
        .map(Option::outcome)
        .orElseGet(() -> outcomes.roughlyOf(plan));
  }

  private static String bags(Outcome collected) {
    Spread bags = collected.bags();
    if (bags == null) {
      return "bags to carry and place";
    }
    long count = (long) Math.ceil(bags.middle());
    return count == 1 ? "about 1 bag" : say("about %d bags", count);
  }

  private static String minutes(Outcome returned, Outcome collected) {
    Spread less = returned.minutes();
    Spread more = collected.minutes();
    return less == null || more == null
        ? ""
        : say(" and takes %.0f minutes more", more.middle() - less.middle());
  }
}
