package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import leafturn.advice.call.Plan.PlannedCut;
import leafturn.advice.call.Weighing.Weighed;

/** The answer in one sentence, or two where more is to be done than to mow. */
final class Answer {
  private final Prospect prospect;
  private final Known known;
  private final Reader reader;
  private final DayNames days;

  Answer(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
  }

  /**
   * What to do.
   *
   * @param returnThatDay what returning all in one cut on the plan's day would break
   */
  String sentence(Weighed best, Weighed returnThatDay) {
    String chosen = chosen(best, returnThatDay);
    return chosen
        + (chosen.contains("of the height") ? "" : breachInOne(best.plan()))
        + breach(best.plan())
        + new HeldCuts(prospect).sentence(best.plan())
        + ifDry(best.plan())
        + new FeedWords(prospect).before(best)
        + aboveAnyDeck(best.plan())
        + new DroughtLook(prospect).sentence(best.plan())
        + (prospect.standsIn()
            ? " Nobody has measured this week's weather: look outside first, and mow only where the leaves are dry and the ground is firm."
            : "");
  }

  /** What steps that take more than a third at once say of it. */
  private String breach(Plan plan) {
    double taken = plan.largestTakenFraction(prospect);
    return plan.inSteps() && taken > prospect.thirdAndTolerance()
        ? say(
            " Up to %s of the height comes off at once, more than %s%s.",
            Words.percent(taken),
            prospect.rules().third(),
            plan.breaksByDeck(prospect)
                ? ", for no usual deck cuts higher"
                : plan.cuts().size() < prospect.rules().mostCuts()
                    ? "; no gentler way down was found"
                    : say(", so that it is done in %s cuts", Words.count(plan.cuts().size())))
        : "";
  }

  /** What one cut that takes more than a third says of it, where nothing else has. */
  private String breachInOne(Plan plan) {
    return !plan.inSteps()
            && plan.choice() != Choice.LOWER_ONCE_AND_COLLECT
            && plan.largestTakenFraction(prospect) > prospect.thirdAndTolerance()
        ? say(
            " %s of the height comes off at once, more than %s.",
            taken(plan.day()), prospect.rules().third())
        : "";
  }

  /** What makes a cut higher than decks go, where a plan has one. */
  private String aboveAnyDeck(Plan plan) {
    return Cautions.aboveAnyDeck(plan, prospect)
        ? say(
            " No usual deck cuts above %s: have that done first with a trimmer or a scythe-type mower, or by a contractor.",
            reader.height(DeckHeights.HIGHEST_MM))
        : "";
  }

  /** What the day decides, where nobody knows yet whether its leaves will be wet. */
  private String ifDry(Plan plan) {
    boolean returned = plan.cuts().get(0).returnedShare() > 0;
    if (returned && prospect.wet(plan.day())) {
      return " The leaves are likely wet then: take what dry hours there are, and spread what clumps.";
    }
    if (!returned || MowingHours.has(plan.day()) || !prospect.leaves().open(plan.day())) {
      return "";
    }
    return say(
        " Leaves are dry %s in %s: %s if they are, else wait for dry hours%s.",
        days.when(plan.day()),
        Words.ofSeasons(1 - prospect.leaves().wetFraction(plan.day())),
        reader.giveBack(),
        atTheLatest(plan));
  }

  /** How long dry hours may be waited for, and what is done where none come. */
  private String atTheLatest(Plan plan) {
    Due due = prospect.due();
    int safe = due.lastSafeDay();
    if (safe > plan.day()) {
      int next = prospect.nextVisit(plan.day() + 1);
      return next > plan.day() + 1
          ? say(" that day, or for %s", days.name(next))
          : say(" until %s at the latest", days.name(safe));
    }
    boolean stays =
        known.holds(prospect.date(plan.day())).any()
            || known.newlySeeded()
            || new WashingIn(prospect).dryOn(plan.day())
            || known.steep();
    boolean noEnd = safe < 0 && due.safe(plan.day());
    return stays || noEnd ? "" : " that day, or " + reader.take();
  }

  private String chosen(Weighed best, Weighed returnThatDay) {
    Plan plan = best.plan();
    return switch (plan.choice()) {
      case MOW_AND_COLLECT ->
          say(
              "%s and %s: %s.",
              mow(plan), reader.take(), new CauseWords(prospect).whyCollect(plan, returnThatDay));
      case RAISE_AND_CUT_TWICE, RAISE_AND_COLLECT -> steps(best, returnThatDay);
      case DOUBLE_PASS ->
          say(
              "%s twice the same day and %s: the second pass chops and spreads the clippings.",
              mow(plan), reader.giveBack());
      case CHOP_LEAVES_AND_RETURN ->
          say(
              "%s, chop the fallen leaves and %s them with the clippings.",
              mow(plan), reader.giveBack());
      case WATER_IN_FIRST -> new FeedWords(prospect).waterIn(plan, mow(plan));
      case LOWER_ONCE_AND_COLLECT ->
          say(
              "%s to %s and %s the straw%s; then keep to %s.",
              mow(plan).replace("Mow", "Lower it once").replace("then mow", "then lower it once"),
              reader.height(plan.last().toMm()),
              reader.take(),
              new GreenUp(prospect).whyNotBefore(plan.day()).isEmpty()
                  ? ""
                  : ", for frost may still harm what turns green if it is done sooner",
              reader.height(prospect.cutHeightMm()));
      default -> returned(best);
    };
  }

  private String returned(Weighed best) {
    Plan plan = best.plan();
    String sentence =
        say(
            "%s and %s the clippings%s.",
            mow(plan),
            reader.giveBack(),
            best.breaks(CallRule.ONE_THIRD)
                ? say(", though %s of the height comes off", taken(plan.day()))
                : "");
    if (known.facts().wishes().noClippings() && known.holds(prospect.date(plan.day())).none()) {
      return sentence
          + aside(plan)
          + say(
              " Cut this short and dry, almost nothing is left to see; to %s is the client's right, and the clippings then stay on the property.",
              reader.take());
    }
    return sentence + aside(plan);
  }

  /** What must not be forgotten over the answer. */
  private String aside(Plan plan) {
    Holds holds = known.holds(prospect.date(plan.day()));
    String held =
        holds.any()
            ? say(" Nothing leaves the lawn: the clippings are held by %s.", holds.products())
            : "";
    return known.newlySeeded() || known.seen(Sight.OWN_STALKS)
        ? held + " Use a sharp blade."
        : held;
  }

  /**
   * "Mow today", "Wait until tomorrow, then mow", "Wait until the frost has gone, ... then mow".
   */
  private String mow(Plan plan) {
    if (plan.day() > 0) {
      return plan.day() == 1 && prospect.leaves().dryAfterRain(1)
          ? say("Wait for the dry hours of tomorrow%s then mow", hours(1))
          : say("Wait until %s, then mow", days.name(plan.day()));
    }
    if (!prospect.laterToday()) {
      return known.frostAt().isPresent()
          ? "Wait until the frost has gone, then mow today"
          : "Mow today";
    }
    return known.frostAt().isPresent() || prospect.frostPossible(0)
        ? say("Wait until the frost has gone and the leaves are dry%s then mow today", hours(0))
        : say("Wait for the dry hours of today%s then mow", hours(0));
  }

  /**
   * ", about 14 to 18,": the hours of today or tomorrow to mow in, or a comma where none are told.
   */
  private String hours(int day) {
    return Optional.of(prospect)
        .filter(p -> !p.todayUntold())
        .flatMap(p -> p.dryHours(day))
        .map(span -> say(", about %s to %s,", reader.clock(span.from()), reader.clock(span.to())))
        .orElse(",");
  }

  private String steps(Weighed best, Weighed returnThatDay) {
    Plan plan = best.plan();
    PlannedCut first = plan.cuts().get(0);
    if (plan.choice() == Choice.RAISE_AND_CUT_TWICE) {
      boolean held = known.holds(prospect.date(plan.day())).any();
      return say(
          "%s: %s; %s each time%s.",
          cut(plan),
          heights(plan, 0),
          held ? "spread what lies thick, " + reader.giveBack() : reader.giveBack(),
          new HeldCuts(prospect).nowhereToGo(plan));
    }
    return say(
        "%s to %s and %s: %s. Then step down: %s%s.",
        Cautions.aboveAnyDeck(plan, prospect)
            ? mow(plan)
                .replace("Mow", "Take the long grass down")
                .replace("then mow", "then take the long grass down")
            : mow(plan)
                .replace("Mow", "Raise the deck, mow")
                .replace("then mow", "then raise the deck, mow"),
        reader.height(first.toMm()),
        reader.take(),
        new CauseWords(prospect).whyRaise(plan, returnThatDay),
        heights(plan, 1),
        further(plan));
  }

  /** What becomes of the clippings of the later steps. */
  private String further(Plan plan) {
    if (plan.collected()) {
      return ", " + reader.take() + " again";
    }
    int again = plan.collectedCuts() - 1;
    return again == 0
        ? ", " + reader.giveBack()
        : say(
            ", %s %s more, then %s",
            reader.take(), again == 1 ? "once" : Words.count(again) + " times", reader.giveBack());
  }

  private String cut(Plan plan) {
    int count = plan.cuts().size();
    String times = count == 2 ? "twice" : Words.count(count) + " times";
    boolean raised = !Cautions.aboveAnyDeck(plan, prospect);
    String raise = (raised ? "raise the deck and " : "") + "cut " + times;
    String mow = mow(plan);
    return mow.equals("Mow today")
        ? raise.substring(0, 1).toUpperCase(Locale.ROOT) + raise.substring(1)
        : mow.startsWith("Wait until " + days.name(plan.day()))
            ? "Wait, then " + raise
            : mow.substring(0, mow.indexOf("then mow")) + "then " + raise;
  }

  /** The cuts of a plan from one of them on; of many the last alone, since a reason has all. */
  private String heights(Plan plan, int from) {
    List<PlannedCut> cuts = plan.cuts();
    if (cuts.size() <= OptionWords.MOST_TOLD) {
      return cuts.stream().skip(from).map(this::height).collect(Collectors.joining(", "));
    }
    String begin = from == 0 ? height(cuts.get(0)) : Words.count(cuts.size() - from) + " more cuts";
    return say("%s, the last %s", begin, height(plan.last()));
  }

  private String height(PlannedCut cut) {
    return say("to %s %s", reader.height(cut.toMm()), days.when(cut.day()));
  }

  private String taken(int day) {
    return ReasonWords.taken(prospect.heightMm(day), prospect.cutHeightMm());
  }
}
