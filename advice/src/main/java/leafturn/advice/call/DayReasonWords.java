package leafturn.advice.call;

import static leafturn.advice.call.Words.percent;
import static leafturn.advice.call.Words.say;

import java.time.LocalTime;
import leafturn.model.weather.hourly.GrassDay.Span;

/** What the weather of a day says for or against mowing, in words. */
final class DayReasonWords {
  private static final int NOON = 12;
  private static final int EVENING = 18;

  private final Prospect prospect;
  private final CallRules rules;
  private final Reader reader;
  private final DayNames days;

  DayReasonWords(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
  }

  /** The finding of a rule of the weather on a day. */
  Reason reason(CallRule rule, int day, boolean against) {
    return switch (rule) {
      case FROST -> frost(day, against);
      case SATURATED -> saturated(day, against);
      case SOFT_GROUND -> softGround(day, against);
      case HEAT -> heat(day, against);
      default -> wet(day, against);
    };
  }

  private Reason frost(int day, boolean against) {
    if (day == 0 && prospect.known().frostAt().isPresent()) {
      return seen(
          CallRule.FROST,
          "Frost on the ground",
          "was seen this morning; frozen leaves break underfoot. Wait until it has gone, whatever the height.",
          say("%s hours to thaw", Words.figure(rules.threshold(CallRule.THAW_HOURS))),
          against);
    }
    return written(
        CallRule.FROST,
        "Down to " + reader.temperature(prospect.medianOf(season -> season.minimumC()[day]), 1),
        say(
            "Grass can be colder than the air and frozen %s; frozen leaves break underfoot.%s",
            days.when(day), prospect.weather().ofSeasons(CallRule.FROST, day)),
        say(
            "frost possible at %s or less",
            reader.temperatureLimit(rules.threshold(CallRule.FROST))),
        against);
  }

  private Reason saturated(int day, boolean against) {
    return written(
        CallRule.SATURATED,
        "Soil full of water",
        say(
            "The root zone holds %s %s; wheels press and smear such soil.%s",
            Words.ofCapacity(prospect.medianOf(season -> season.soilWaterFraction()[day])),
            days.when(day),
            prospect.weather().ofSeasons(CallRule.SATURATED, day)),
        "limit " + percent(rules.threshold(CallRule.SATURATED)),
        against);
  }

  private Reason softGround(int day, boolean against) {
    return written(
        CallRule.SOFT_GROUND,
        say(
            "%s of water in the three days before",
            reader.water(prospect.medianOf(season -> season.waterOfThreeDaysBeforeMm(day)))),
        say(
            "The ground is likely too soft for wheels %s; water of the day itself is not in that.%s",
            days.when(day), prospect.weather().ofSeasons(CallRule.SOFT_GROUND, day)),
        "limit " + reader.waterLimit(rules.threshold(prospect.weather().softRule())),
        against);
  }

  private Reason heat(int day, boolean against) {
    return written(
        CallRule.HEAT,
        "Up to " + reader.temperature(prospect.medianOf(season -> season.maximumC()[day]), 0),
        say(
            "Too hot for a cool-season grass to grow %s; a cut would cost it shade and water.%s",
            days.when(day), prospect.weather().ofSeasons(CallRule.HEAT, day)),
        "limit " + reader.temperatureLimit(rules.threshold(CallRule.HEAT)),
        against);
  }

  private Reason wet(int day, boolean against) {
    boolean hours = MowingHours.has(day);
    String clings = "Wet clippings cling and clump, and wet slopes are slippery.";
    return seenWet(day)
        ? seen(
            CallRule.WET,
            "Leaves wet " + seenWhen(),
            (prospect.standsIn() ? "" : water(day) + reckoned(day)) + clings,
            dryEnough(hours),
            against)
        : written(
            CallRule.WET,
            "Leaves likely wet " + days.name(day),
            water(day) + reckoned(day) + clings + (hours ? "" : " Dew is not in this."),
            dryEnough(hours),
            against);
  }

  private String dryEnough(boolean hours) {
    return hours
        ? say(
            "dry enough from %s hours in a row", Words.figure(rules.threshold(CallRule.DRY_HOURS)))
        : say(
            "wet above %s, or %s the day before",
            reader.waterLimit(rules.threshold(CallRule.WET)),
            reader.waterLimit(rules.threshold(CallRule.WET_YESTERDAY)));
  }

  /** Rain and water of the day and the day before; empty where most possible seasons have none. */
  private String water(int day) {
    String of = reader.littleWater(prospect.medianOf(season -> season.waterMm(day)));
    String before = reader.littleWater(prospect.medianOf(season -> season.waterMm(day - 1)));
    String none = reader.littleWater(0);
    return of.equals(none) && before.equals(none)
        ? ""
        : say("%s of rain or water %s, %s the day before. ", of, days.when(day), before);
  }

  /** What makes leaves count as wet beside the water: too few dry hours, or some seasons' rain. */
  private String reckoned(int day) {
    if (!MowingHours.has(day)) {
      return water(day).isEmpty() ? say("Rain or water wets them in %s. ", wetSeasons(day)) : "";
    }
    if (prospect.dryHours(day).isPresent()) {
      return "";
    }
    int longest = prospect.longestHours(day).map(Span::hours).orElse(0);
    return say(
        "%s dry and free of frost in %s of the possible weathers. ",
        longest == 0
            ? "No hour is"
            : longest == 1 ? "Only one hour is" : "Only " + longest + " hours in a row are",
        percent(rules.threshold(CallRule.DRY_HOURS_SHARE)));
  }

  private String wetSeasons(int day) {
    return Words.ofSeasons(prospect.leaves().wetFraction(day));
  }

  /** The part of today in which wet leaves or rain were seen. */
  private String seenWhen() {
    Sighting seen = prospect.known().wetToday().orElse(null);
    LocalTime at = seen == null ? null : seen.at();
    return at == null
        ? "today"
        : at.getHour() < NOON
            ? "this morning"
            : at.getHour() < EVENING ? "this afternoon" : "this evening";
  }

  private boolean seenWet(int day) {
    return day == 0 && prospect.known().wetToday().isPresent();
  }

  private String standIns() {
    return prospect.standsIn()
        ? " So it is in the days of other years that stand in for this week's weather, which nobody has measured."
        : "";
  }

  private Reason written(
      CallRule rule, String headline, String meaning, String threshold, boolean against) {
    return seen(rule, headline, meaning + standIns(), threshold, against);
  }

  /** The same of what somebody saw, whatever the weather record says. */
  private Reason seen(
      CallRule rule, String headline, String meaning, String threshold, boolean against) {
    return Reason.of(rules.entry(rule), headline, meaning, threshold, against);
  }
}
