package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.List;
import java.util.Optional;
import leafturn.advice.call.Option.Outcome;

/** What it costs to return and to collect, for a client who wants no clippings carried in. */
record WishWords(Prospect prospect, List<Option> options, Outcomes outcomes) {

  /**
   * The reason that sets both side by side, of the cuts that are advised.
   *
   * @param plan those cuts; one of today where the lawn is left alone
   */
  Optional<Reason> reason(Plan plan) {
    if (options.isEmpty()) {
      return Optional.empty();
    }
    Outcome returned =
        outcome(
            plan.inSteps() ? plan.collecting(0) : Plan.mowAndReturn(plan.day(), toMm(plan)), plan);
    Holds holds = prospect.known().holds(prospect.date(plan.day()));
    return Optional.of(
        reason(plan, returned, holds.any() ? held(holds) : collecting(plan, returned)));
  }

  private static double toMm(Plan plan) {
    return plan.last().toMm();
  }

  private String held(Holds holds) {
    return say(
        "To %s is no choice: the clippings are held by %s and have nowhere to go.",
        prospect.reader().take(), holds.products());
  }

  private String collecting(Plan plan, Outcome returned) {
    Outcome collected =
        outcome(
            plan.inSteps()
                ? plan.collecting(plan.cuts().size())
                : Plan.mowAndCollect(plan.day(), toMm(plan)),
            plan);
    return say(
        "To %s%s fills %s%s, and takes that away.",
        prospect.reader().take(), each(plan), bags(collected), minutes(returned, collected));
  }

  /** " both cuts" where more than one is advised. */
  private static String each(Plan plan) {
    int cuts = plan.cuts().size();
    return !plan.inSteps() ? "" : cuts == 2 ? " both cuts" : say(" all %s cuts", Words.count(cuts));
  }

  private Reason reason(Plan plan, Outcome returned, String collecting) {
    Reader reader = prospect.reader();
    DayNames days = new DayNames(prospect.today().on());
    return Reason.of(
        prospect.rules().entry(CallRule.NO_CLIPPINGS),
        "What each costs",
        say(
            "To %s%s %s leaves %s%s, and %s of nitrogen that feeds the grass again by about a third. %s",
            reader.giveBack(),
            each(plan),
            plan.inSteps() ? say("from %s on", days.name(plan.day())) : days.when(plan.day()),
            reader.load(returned.dryGPerM2().middle()),
            prospect.wet(plan.day()) ? ", wet" : "",
            reader.onArea(returned.nitrogenG().middle(), ""),
            collecting),
        say(
            "seen from %s, or longer than %s, or wet",
            reader.loadLimit(prospect.rules().threshold(CallRule.NO_CLIPPINGS)),
            reader.height(prospect.rules().threshold(CallRule.SHORT_PIECES))),
        false);
  }

  /** Of an option that is shown, else over some of the possible seasons. */
  private Outcome outcome(Plan priced, Plan advised) {
    return options.stream()
        .filter(option -> option.choice() == priced.choice())
        .filter(option -> option.day().equals(prospect.date(priced.day())))
        .filter(
            option ->
                priced.equals(advised) && option.best()
                    || !priced.inSteps() && toMm(priced) == prospect.cutHeightMm())
        .findFirst()
        .map(Option::outcome)
        .orElseGet(() -> outcomes.roughlyOf(priced));
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
