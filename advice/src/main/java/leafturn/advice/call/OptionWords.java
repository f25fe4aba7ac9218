package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.stream.Collectors;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.Weighing.Weighed;

/** The words of an option. */
final class OptionWords {
  /** Cuts that are told one by one; of more the first and the last are, and a reason has all. */
  static final int MOST_TOLD = 3;

  private final Prospect prospect;
  private final Reader reader;
  private final DayNames days;

  OptionWords(Prospect prospect) {
    this.prospect = prospect;
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
  }

  /** An option with its words. */
  Option option(Weighed weighed, boolean best, Outcome outcome) {
    Plan plan = weighed.plan();
    LocalDate day = prospect.date(plan.day());
    return new Option(plan.choice(), title(plan), day, best, remark(weighed, outcome), outcome);
  }

  private String title(Plan plan) {
    String name = days.name(plan.day());
    String day = Character.toUpperCase(name.charAt(0)) + name.substring(1) + later(plan);
    return switch (plan.choice()) {
      case MOW_AND_COLLECT -> day + ", " + reader.take();
      case WAIT_FOR_DRY_HOURS -> day + " in the dry hours, " + reader.giveBackAlone();
      case DOUBLE_PASS -> day + ", two passes, " + reader.giveBackAlone();
      case CHOP_LEAVES_AND_RETURN -> day + ", chop leaves and " + reader.giveBackAlone();
      case WATER_IN_FIRST ->
          "Water in first; " + days.name(plan.day()) + ", " + reader.giveBackAlone();
      case LOWER_ONCE_AND_COLLECT ->
          say("%s to %s, %s", day, reader.height(plan.last().toMm()), reader.take());
      case RAISE_AND_CUT_TWICE -> day + " " + heights(plan) + ", " + reader.giveBack() + each(plan);
      case RAISE_AND_COLLECT ->
          day
              + " "
              + heights(plan)
              + ", "
              + reader.take()
              + (plan.collected() ? each(plan) : first(plan.collectedCuts()));
      default -> day + ", " + reader.giveBackAlone();
    };
  }

  /** Whatever is done today, but to mow and return at once, waits for its dry hours. */
  private String later(Plan plan) {
    boolean named =
        EnumSet.of(Choice.MOW_AND_RETURN, Choice.WAIT_FOR_DRY_HOURS).contains(plan.choice());
    boolean waits = plan.day() == 0 && prospect.laterToday() && prospect.dryHours(0).isPresent();
    return waits && !named ? " in the dry hours" : "";
  }

  private static String first(int cuts) {
    return cuts == 1 ? " the first" : " the first " + Words.count(cuts);
  }

  private static String each(Plan plan) {
    return plan.cuts().size() == 2 ? " both" : " all";
  }

  /** "to 95 mm, Saturday to 76 mm". */
  private String heights(Plan plan) {
    if (plan.cuts().size() > MOST_TOLD) {
      return say(
          "to %s, then in %s more cuts to %s by %s",
          reader.height(plan.cuts().get(0).toMm()),
          Words.count(plan.cuts().size() - 1),
          reader.height(plan.last().toMm()),
          days.name(plan.last().day()));
    }
    return plan.cuts().stream()
        .map(
            cut ->
                (cut.day() == plan.day() ? "" : days.name(cut.day()) + " ")
                    + "to "
                    + reader.height(cut.toMm()))
        .collect(Collectors.joining(", "));
  }

  private String remark(Weighed weighed, Outcome outcome) {
    String trouble =
        weighed.broken().stream()
            .map(rule -> trouble(rule, weighed.plan()))
            .filter(words -> !words.isEmpty())
            .findFirst()
            .orElse("");
    Spread bags = outcome.bags();
    if (!trouble.isEmpty() || outcome.nutrientsStay() || bags == null) {
      return trouble;
    }
    long count = (long) Math.ceil(bags.middle());
    return count == 1 ? "1 bag to place" : count + " bags to place";
  }

  /** What a broken rule means, in few words; empty for rules that only break ties. */
  String trouble(CallRule rule, Plan plan) {
    return switch (rule) {
      case SEASON -> "outside the mowing season";
      case VISIT -> "nobody can come";
      case LABEL_WAIT -> "the label asks to wait";
      case DORMANT -> prospect.known().wilting().isPresent() ? "wilting" : "at rest in drought";
      case LEAST_GROWTH -> "hardly anything to cut";
      case FROST -> "frost possible";
      case WET_SLOPE -> "wet slope";
      case SATURATED -> likely(rule, plan, "soil full of water", "soil likely full of water");
      case SOFT_GROUND -> "ground likely soft";
      case HEAT -> likely(rule, plan, "too hot", "likely too hot");
      case FEED_COLLECTED -> "takes the feed away";
      case HELD -> "clippings have nowhere to go";
      case SEEDLINGS -> "pulls seedlings";
      case GREEN_UP -> "leaves the straw";
      case HALF ->
          plan.inSteps()
              ? "leaves long grass lying"
              : "over " + prospect.rules().half() + " of the height";
      case ONE_THIRD -> "over " + prospect.rules().third() + " of the height";
      case CLUMPS_HEAVY -> "clumps very likely";
      case STEMMY -> "long and stemmy";
      case LEAF_COVER -> "fallen leaves in the way";
      case LENGTH -> "long pieces";
      case CLUMPS -> "clumps likely";
      case SEED_HEADS -> "annual bluegrass in seed";
      case NO_CLIPPINGS -> "clippings would be seen";
      case DUE -> prospect.due().rooted(plan.day()) ? "not due yet" : "new seed not rooted";
      case FEED_DRY -> "feed lies dry";
      case WET_RETURN, WET -> "leaves likely wet";
      default -> "";
    };
  }

  /** What is known of a day, or what more than half of the possible seasons say of it. */
  private String likely(CallRule rule, Plan plan, String known, String likely) {
    return prospect.weather().unsure(rule, plan.day()) ? likely : known;
  }
}
