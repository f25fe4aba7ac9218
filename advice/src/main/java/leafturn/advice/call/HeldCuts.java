package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import leafturn.advice.call.Particulars.Placing;

/** Which cuts of a plan a product still holds, and a hold that is over by its day, in words. */
record HeldCuts(Prospect prospect) {

  /**
   * How many cuts of a plan, the first ones, are held: days pass between them, and each one that is
   * returned counts as a mowing.
   */
  int count(Plan plan) {
    int cut = 0;
    while (cut < plan.cuts().size() && held(plan, cut)) {
      cut++;
    }
    return cut;
  }

  private boolean held(Plan plan, int cut) {
    return prospect.known().holds(prospect.date(plan.cuts().get(cut).day())).all().stream()
        .anyMatch(hold -> hold.daysLeft() > 0 || hold.mowingsLeft() > cut);
  }

  /** ", for the clippings have nowhere to go", of the cuts of which that is true. */
  String nowhereToGo(Plan plan) {
    int held = count(plan);
    if (held == 0) {
      return "";
    }
    String of =
        held == plan.cuts().size()
            ? ""
            : held == 1 ? " of the first" : say(" of the first %s", Words.count(held));
    return say(", for the clippings%s have nowhere to go", of);
  }

  /** Today's hold, where it is over by the day of a plan. */
  private Optional<Holds> over(Plan plan) {
    Holds today = prospect.known().holds(prospect.date(0));
    boolean over =
        today.any()
            && !plan.cuts().isEmpty()
            && prospect.known().holds(prospect.date(plan.day())).none();
    return over ? Optional.of(today) : Optional.empty();
  }

  /** The first day of a plan's wait that is free of it. */
  private String end(Plan plan) {
    int end =
        IntStream.rangeClosed(1, plan.day())
            .filter(day -> prospect.known().holds(prospect.date(day)).none())
            .findFirst()
            .orElse(plan.day());
    return new DayNames(prospect.today().on()).name(end);
  }

  /** " Until Sunday the clippings are held by an insecticide.", where a plan to collect waits. */
  String sentence(Plan plan) {
    return plan.returned()
        ? ""
        : over(plan)
            .map(
                holds ->
                    say(" Until %s the clippings are held by %s.", end(plan), holds.products()))
            .orElse("");
  }

  /** The reason that tells of a hold which is over by then. */
  Optional<Reason> reason(Plan plan) {
    return over(plan)
        .map(
            holds ->
                Reason.of(
                    prospect.rules().entry(CallRule.HELD),
                    say("Clippings held by %s until %s", holds.products(), end(plan)),
                    "What is cut before has nowhere to go; from then on it may be used elsewhere.",
                    holds.basis(),
                    false));
  }

  /** Where clippings of a plan's day may go, and until when they may go nowhere. */
  Placing placing(Plan plan, PlacingRules places) {
    if (over(plan).isEmpty()) {
      return places.placing(prospect.today().on());
    }
    Placing then = places.placing(prospect.date(plan.day()));
    String first = then.sentence();
    return new Placing(
        then.offTheLawn(),
        then.beds(),
        then.heap(),
        say(
            "Clippings have nowhere to go until %s: %s them on the lawn.%s",
            end(plan),
            over(plan).orElseThrow().that("keeps", "keep"),
            first.isEmpty()
                ? ""
                : " After that: "
                    + first.substring(0, 1).toLowerCase(Locale.ROOT)
                    + first.substring(1)));
  }
}
