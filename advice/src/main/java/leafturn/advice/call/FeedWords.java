package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.util.Locale;
import java.util.Optional;
import leafturn.advice.call.Weighing.Weighed;

/** What granular feed that lies dry asks for, as part of an answer. */
final class FeedWords {
  private final Prospect prospect;
  private final Known known;
  private final Reader reader;
  private final DayNames days;

  FeedWords(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
  }

  /** What granules ask for that a plan would mow over; empty where none lie dry. */
  String dry(Weighed best) {
    if (!best.breaks(CallRule.FEED_DRY) || !best.plan().returned()) {
      return "";
    }
    int day = best.plan().day();
    Optional<Integer> water = wateringDay();
    if (water.filter(on -> on <= day).isPresent()) {
      return say(
          " The granular feed lies dry, and the mower picks granules up: wash it in with %s first unless its label says otherwise, mow once the leaves are dry, and keep all clippings on the lawn.",
          waterWords());
    }
    int safe = prospect.due().lastSafeDay();
    return say(
        " The granular feed lies dry and may not be watered in%s, and the mower picks granules up: keep all clippings on the lawn%s.",
        water.map(on -> say(" before %s", days.name(on))).orElse(""),
        safe > day ? say("; wait only for rain that is sure to come by %s", days.name(safe)) : "");
  }

  /**
   * The answer where feed is watered in before the mowing.
   *
   * @param mow when to mow, as the answer begins: "Mow today"
   */
  String waterIn(Plan plan, String mow) {
    return say(
        "Water the feed in %s, with %s unless its label says otherwise; mow %s once the leaves are dry, and %s the clippings.",
        days.when(wateringDay().orElseThrow()),
        waterWords(),
        mow.toLowerCase(Locale.ROOT).startsWith("mow today") ? "today" : days.when(plan.day()),
        reader.giveBack());
  }

  private Optional<Integer> wateringDay() {
    return known
        .facts()
        .wateringLimits()
        .firstAllowed(prospect.today().on(), Plans.LONGEST_WAIT_DAYS);
  }

  private String waterWords() {
    return reader.height(known.dryFeed().map(known::washInMm).orElse(0.0));
  }
}
