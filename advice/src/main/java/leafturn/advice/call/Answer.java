package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.List;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.Weighing.Weighed;

/** The sentence of a call, and the words for each of its options. */
final class Answer {
  private final Prospect prospect;
  private final Reader reader;
  private final DayNames days;

  Answer(Prospect prospect) {
    this.prospect = prospect;
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
  }

  /** What to do, in one sentence. */
  String sentence(Weighed best, Weighed returnToday) {
    Plan plan = best.plan();
    String day = days.when(plan.day());
    return switch (plan.choice()) {
      case MOW_AND_RETURN ->
          "Mow today and "
              + reader.giveBack()
              + " the clippings"
              + (best.breaks(CallRule.ONE_THIRD)
                  ? say(", though %s of the height comes off", taken(0))
                  : "")
              + ".";
      case MOW_AND_COLLECT ->
          (plan.day() == 0 ? "Mow today" : "Wait, mow " + day)
              + " and "
              + reader.take()
              + ": "
              + whyCollect(plan, returnToday)
              + ".";
      case RAISE_AND_CUT_TWICE ->
          say(
              "%s: to %s %s, to %s %s; %s both times.",
              plan.day() == 0 ? "Cut twice" : "Wait, then cut twice",
              reader.height(plan.cuts().get(0).toMm()),
              day,
              reader.height(plan.cuts().get(1).toMm()),
              days.when(plan.cuts().get(1).day()),
              reader.giveBack());
      default ->
          say(
              "Wait until %s, then mow and %s the clippings.",
              days.name(plan.day()), reader.giveBack());
    };
  }

  private String taken(int day) {
    return ReasonWords.taken(prospect.heightMm(day), prospect.cutHeightMm());
  }

  private String whyCollect(Plan plan, Weighed returnToday) {
    double heightMm = prospect.heightMm(plan.day());
    if (Prospect.takenFraction(heightMm, prospect.cutHeightMm())
        > prospect.rules().threshold(CallRule.HALF)) {
      return "more than half of the height comes off; step the height down over several mowings";
    }
    return returnToday.breaks(CallRule.LENGTH)
        ? "too long to fall between the leaves"
        : "too much for the turf to take up without clumps";
  }

  /** Why the lawn is left alone and when to look again, in one sentence. */
  String leave(CallRule rule) {
    return switch (rule) {
      case SEASON ->
          say(
              "Leave it: the mowing season begins on %s.",
              DayNames.date(prospect.mowingSeason().startAfter(prospect.today().on())));
      case HARDLY_GROWING ->
          "Leave it: the grass is at rest in the drought; look again after rain.";
      default -> "Leave it: nothing to cut yet; " + nextLook() + ".";
    };
  }

  private String nextLook() {
    List<DaysAhead.Season> seasons = prospect.seasons();
    double[] due = new double[seasons.size()];
    for (int season = 0; season < due.length; season++) {
      DaysAhead.Season one = seasons.get(season);
      int day = Prospect.firstDay(candidate -> prospect.due(one, candidate));
      due[season] = day < 0 ? WeatherToCome.DAYS + 1 : day;
    }
    double middle = Spread.of(due).middle();
    return middle > WeatherToCome.DAYS
        ? say("not due within %d days", WeatherToCome.DAYS)
        : "next look about " + DayNames.date(prospect.date((int) Math.round(middle)));
  }

  /** An option with its words. */
  Option option(Weighed weighed, boolean best, Outcome outcome) {
    Plan plan = weighed.plan();
    LocalDate day = prospect.date(plan.day());
    return new Option(plan.choice(), title(plan), day, best, remark(weighed, outcome), outcome);
  }

  private String title(Plan plan) {
    String name = days.name(plan.day());
    String day = Character.toUpperCase(name.charAt(0)) + name.substring(1);
    return switch (plan.choice()) {
      case MOW_AND_COLLECT -> day + ", " + reader.take();
      case RAISE_AND_CUT_TWICE ->
          say(
              "%s to %s, %s to %s, %s both",
              day,
              reader.height(plan.cuts().get(0).toMm()),
              days.name(plan.cuts().get(1).day()),
              reader.height(plan.cuts().get(1).toMm()),
              reader.giveBack());
      default -> day + ", " + reader.giveBack();
    };
  }

  private static String remark(Weighed weighed, Outcome outcome) {
    String trouble = weighed.broken().isEmpty() ? "" : trouble(weighed.broken().get(0));
    Spread bags = outcome.bags();
    if (!trouble.isEmpty() || outcome.nutrientsStay() || bags == null) {
      return trouble;
    }
    long count = (long) Math.ceil(bags.middle());
    return count == 1 ? "1 bag to place" : count + " bags to place";
  }

  private static String trouble(CallRule rule) {
    return switch (rule) {
      case SEASON -> "outside the mowing season";
      case LEAST_GROWTH -> "hardly anything to cut";
      case FROST -> "frost possible";
      case SATURATED -> "soil full of water";
      case SOFT_GROUND -> "ground likely soft";
      case HEAT -> "too hot";
      case HALF -> "over half of the height";
      case ONE_THIRD -> "over a third of the height";
      case CLUMPS_HEAVY -> "clumps very likely";
      case LENGTH -> "long pieces";
      case CLUMPS -> "clumps likely";
      case DUE -> "not due yet";
      case WET -> "leaves likely wet";
      default -> "";
    };
  }
}
