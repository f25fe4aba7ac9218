package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.List;
import java.util.Optional;
import leafturn.advice.call.Option.Outcome;

/** What it costs to return and to collect, for a client who wants no clippings carried in. */
record WishWords(Prospect prospect, List<Option> options) {

  /** The reason that sets both side by side, where both can be done today. */
  Optional<Reason> reason() {
    Optional<Outcome> returned = today(Choice.MOW_AND_RETURN);
    Optional<Outcome> collected = today(Choice.MOW_AND_COLLECT);
    if (returned.isEmpty() || collected.isEmpty()) {
      return Optional.empty();
    }
    Reader reader = prospect.reader();
    return Optional.of(
        Reason.of(
            prospect.rules().entry(CallRule.NO_CLIPPINGS),
            "What each costs",
            say(
                "To %s leaves %s, and %s of nitrogen that feeds the grass again by about a third. To %s fills %s%s, and takes that away.",
                reader.giveBack(),
                reader.load(returned.get().dryGPerM2().middle()),
                reader.onArea(returned.get().nitrogenG().middle(), ""),
                reader.take(),
                bags(collected.get()),
                minutes(returned.get(), collected.get())),
            say(
                "seen from %s, or longer than %s, or wet",
                reader.loadLimit(prospect.rules().threshold(CallRule.NO_CLIPPINGS)),
                reader.height(prospect.rules().threshold(CallRule.SHORT_PIECES))),
            false));
  }

  private Optional<Outcome> today(Choice choice) {
    return options.stream()
        .filter(option -> option.choice() == choice && option.day().equals(prospect.today().on()))
        .map(Option::outcome)
        .findFirst();
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
