package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import leafturn.advice.call.Weighing.Weighed;

/** What granular feed that lies dry asks for, in an answer and beside it. */
final class FeedWords {
  private final Prospect prospect;
  private final Known known;
  private final Reader reader;
  private final DayNames days;
  private final WashingIn washing;

  FeedWords(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
    this.washing = new WashingIn(prospect);
  }

  /** What granules that lie dry ask for beside a plan; empty where none do, or it tells of it. */
  String before(Weighed best) {
    Plan plan = best.plan();
    Optional<LocalDate> wetDay = washing.toBeLookedAt();
    if (wetDay.isPresent()) {
      return look(wetDay.get(), plan);
    }
    if (best.breaks(CallRule.FEED_DRY)) {
      return plan.returned() ? dry(plan.day()) : "";
    }
    if (known.dryFeed().isEmpty() || plan.choice() == Choice.WATER_IN_FIRST) {
      return "";
    }
    OptionalInt water = washing.waterDay();
    return water.isPresent()
        ? say(
            " Water the feed in %s, with %s unless its label says otherwise, before you mow.",
            days.when(water.getAsInt()), waterWords())
        : " " + rain() + ".";
  }

  private String look(LocalDate wetDay, Plan plan) {
    return say(
        " %s may have washed the granular feed in: look whether granules still lie, and log it as watered in if none do; if some do, %s.",
        wetDay.equals(prospect.today().on()) ? "Today's rain" : "Rain of " + DayNames.date(wetDay),
        washing.dryOn(plan.day()) ? lyingStill(plan) : washedBefore());
  }

  private static String lyingStill(Plan plan) {
    return plan.returned()
        ? "keep all clippings on the lawn"
        : "do not mow before they are washed in";
  }

  private String washedBefore() {
    OptionalInt rain = washing.rainDay();
    return rain.isPresent()
        ? say("leave them to the rain that is sure by %s", days.name(rain.getAsInt()))
        : say("wash them in with %s before you mow", waterWords());
  }

  /** What granules ask for that a plan would mow over. */
  private String dry(int day) {
    OptionalInt water = washing.waterDay();
    if (washing.rainDay().isPresent()) {
      return say(
          " The granular feed lies dry, and the mower picks granules up: keep all clippings on the lawn. %s.",
          rain());
    }
    if (water.isPresent() && water.getAsInt() <= day) {
      return say(
          " The granular feed lies dry, and the mower picks granules up: wash it in with %s first unless its label says otherwise, mow once the leaves are dry, and keep all clippings on the lawn.",
          waterWords());
    }
    int safe = prospect.due().lastSafeDay();
    return say(
        " The granular feed lies dry and may not be watered in%s, and the mower picks granules up: keep all clippings on the lawn%s.",
        water.isPresent() ? say(" before %s", days.name(water.getAsInt())) : "",
        safe > day ? say("; wait only for rain that is sure to come by %s", days.name(safe)) : "");
  }

  /** "Rain of tomorrow washes the feed in ..., so do not water it". */
  private String rain() {
    int day = washing.rainDay().orElseThrow();
    return say(
        "Rain %s %s washes the feed in, in %s, so that it needs no water",
        day < 2 ? "of" : "up to", days.name(day), Words.ofSeasons(washing.rainFraction(day)));
  }

  /** What water the feed needs, beside the answer. */
  String water() {
    Optional<LocalDate> wetDay = washing.toBeLookedAt();
    if (wetDay.isPresent()) {
      return say(
          "Give the feed no water before you have looked: %s of rain on %s, the day it was spread, may have washed it in. Log it as watered in if no granules lie any more.",
          reader.water(washing.rainMm(wetDay.get())), DayNames.date(wetDay.get()));
    }
    if (washing.rainDay().isPresent()) {
      return rain() + "; sweep granules off paving before.";
    }
    OptionalInt water = washing.waterDay();
    return water.isPresent()
        ? say(
            "Wash the feed in with %s of water %s; its label comes first. No more than that on that day, or it runs off.",
            waterWords(), days.when(water.getAsInt()) + known.facts().wateringLimits().hours())
        : say(
            "The feed needs %s of water, and watering is not allowed: wait for rain, and sweep granules off paving.",
            waterWords());
  }

  /**
   * The answer where feed is watered in before the mowing.
   *
   * @param mow when to mow, as the answer begins: "Mow today"
   */
  String waterIn(Plan plan, String mow) {
    return say(
        "Water the feed in %s, with %s unless its label says otherwise; mow %s once the leaves are dry, and %s the clippings.",
        days.when(washing.waterDay().orElseThrow()),
        waterWords(),
        mow.toLowerCase(Locale.ROOT).startsWith("mow today") ? "today" : days.when(plan.day()),
        reader.giveBack());
  }

  private String waterWords() {
    return reader.height(washing.neededMm());
  }
}
