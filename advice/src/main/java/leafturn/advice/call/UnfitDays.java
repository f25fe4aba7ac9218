package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leafturn.advice.call.Weighing.Weighed;

/** Why no day is safe, and which rules speak against the days on which little would come off. */
record UnfitDays(Prospect prospect, Weighing weighing) {
  /** Rules by which there is nothing to be mown yet. */
  private static final Set<CallRule> NOT_DUE = EnumSet.of(CallRule.DUE, CallRule.LEAST_GROWTH);

  /** Rules that decide between choices of a day, not whether it can be mown. */
  private static final Set<CallRule> LIGHTER =
      EnumSet.of(
          CallRule.CARRY,
          CallRule.SECOND_CUT,
          CallRule.SECOND_PASS,
          CallRule.DELAY,
          CallRule.WET_RETURN);

  /** What speaks against days, and whether that is only what most possible seasons say. */
  private record Trouble(String words, boolean unsure) {}

  /**
   * Why no day from the day of the call to the one chosen is safe; empty where one is, where none
   * is in sight, or where nothing is due before.
   *
   * @param safe the last safe day, or -1
   * @param chosen the day of the first cut
   */
  String words(Due due, int safe, int chosen) {
    if (safe >= chosen || due.safe(chosen)) {
      return "";
    }
    DayNames days = new DayNames(prospect.today().on());
    String third = prospect.rules().third();
    String comesOff =
        say(
            "more than %s would come off in one cut %s%s",
            third, days.when(chosen), in(chosen, due.overFraction(chosen)));
    if (safe < 0) {
      return "No safe day is left: " + comesOff;
    }
    Map<Trouble, List<String>> against = against(safe, days);
    return against.isEmpty()
        ? ""
        : say(
            "No safe day is fit to mow: up to %s no more than %s would come off, but %s; %s",
            days.name(safe), third, told(against), comesOff);
  }

  /** Days by the heaviest rule that speaks against them; empty where on some of them none does. */
  private Map<Trouble, List<String>> against(int safe, DayNames days) {
    Map<Trouble, List<String>> against = new LinkedHashMap<>();
    OptionWords words = new OptionWords(prospect);
    boolean due = false;
    for (int day = 0; day <= Math.min(safe, Plans.LONGEST_WAIT_DAYS); day++) {
      Weighed weighed = weighing.returnedOn(day);
      List<CallRule> broken =
          weighed.broken().stream().filter(rule -> !LIGHTER.contains(rule)).toList();
      due |= broken.stream().noneMatch(NOT_DUE::contains);
      String trouble = broken.isEmpty() ? "" : words.trouble(broken.get(0), weighed.plan());
      if (!trouble.isEmpty()) {
        boolean unsure = prospect.weather().unsure(broken.get(0), day);
        against
            .computeIfAbsent(new Trouble(trouble, unsure), rule -> new ArrayList<>())
            .add(days.name(day));
      }
    }
    return due ? against : Map.of();
  }

  private static String told(Map<Trouble, List<String>> against) {
    List<String> parts = new ArrayList<>();
    against.forEach(
        (trouble, days) ->
            parts.add(
                say(
                    "%s %s%s",
                    trouble.words(),
                    Words.list(days),
                    trouble.unsure() ? " (in more than half of the possible seasons)" : "")));
    return String.join(", ", parts);
  }

  /** In how many of the possible seasons; nothing of a height that is the same in all of them. */
  private String in(int day, double fraction) {
    Spread height = prospect.spreadOf(season -> season.heightMm()[day]);
    return height.low() == height.high() ? "" : " in " + Words.ofSeasons(fraction);
  }
}
