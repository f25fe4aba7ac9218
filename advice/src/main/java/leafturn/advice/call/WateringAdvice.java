package leafturn.advice.call;

import static leafturn.advice.call.Words.figure;
import static leafturn.advice.call.Words.say;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** When and how much to water: feed first, then grass at rest, then grass that runs dry. */
final class WateringAdvice {
  private static final int DAYS_AHEAD = 7;
  private static final int RAIN_LOOK_DAYS = 3;

  /** Less than this is not worth a watering, mm (our judgement). */
  private static final double LEAST_MM = 5;

  /** Rain that spares grass at rest its survival water, mm (our judgement). */
  private static final double SPARING_RAIN_MM = 10;

  private final Prospect prospect;
  private final Known known;
  private final CallRules rules;
  private final Reader reader;
  private final DayNames days;

  WateringAdvice(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.rules = prospect.rules();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
  }

  /** Sentences on water; empty when there is no need of it. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    known.dryFeed().ifPresent(feed -> sentences.add(forFeed(feed)));
    if (known.dormant().isPresent()) {
      sentences.add(forSurvival());
    } else if (runsDry()) {
      sentences.add(forDrySoil());
    }
    return sentences;
  }

  private String forFeed(Circumstances.DryFeed feed) {
    String water = reader.height(known.washInMm(feed));
    return allowedDay()
        .map(
            day ->
                say(
                    "Wash the feed in with %s of water %s; its label comes first. No more than that, or it runs off.",
                    water, when(day)))
        .orElse(
            say(
                "The feed needs %s of water, and watering is not allowed: wait for rain, and sweep granules off paving.",
                water));
  }

  private String forSurvival() {
    String water = reader.height(rules.threshold(CallRule.SURVIVAL_WATER));
    String every = figure(rules.threshold(CallRule.SURVIVAL_DAYS));
    long dry = daysWithoutRain();
    if (allowedDay().isEmpty()) {
      return "Watering is not allowed here now. Most grass at rest lives through some weeks of it; keep off, and water as soon as the rules let you.";
    }
    if (dry < rules.threshold(CallRule.SURVIVAL_DAYS)) {
      return say(
          "Grass at rest needs no water yet. After %s days without rain give %s once, to keep its crowns alive and not to wake it.",
          every, water);
    }
    if (likelyMm() >= SPARING_RAIN_MM) {
      return say(
          "Grass at rest needs no water yet: %s of rain is likely within three days (middle of the possible seasons). Without it give %s once, to keep its crowns alive and not to wake it.",
          reader.water(likelyMm()), water);
    }
    return say(
        "To keep the crowns alive, not to wake the grass, give %s %s, and again every %s days without rain.",
        water, when(allowedDay().get()), every);
  }

  /** Days since the last rain worth its name, as far as they are on record. */
  private long daysWithoutRain() {
    List<Outlook.PastDay> past = prospect.today().past();
    int days = 0;
    for (int day = past.size() - 1; day >= 0; day--) {
      if (past.get(day).rainMm() >= SPARING_RAIN_MM) {
        return days;
      }
      days++;
    }
    return days;
  }

  private String forDrySoil() {
    if (known.newlySeeded()) {
      return "Seedlings must not dry out, and the root zone is dry: water them lightly and often as far as local rules allow, and mow when the surface is firm (common practice, no source).";
    }
    return grows() || known.wilting().isPresent() ? forGrowth() : forSurvival();
  }

  private boolean grows() {
    return prospect.recentGrowthGPerM2() >= rules.threshold(CallRule.HARDLY_GROWING);
  }

  /** Dry soil, whether rain is in sight that would do or not. */
  private boolean runsDry() {
    LawnToday today = prospect.today();
    return !prospect.standsIn()
        && !prospect.watered()
        && today.soilWaterFraction() < rules.threshold(CallRule.WATER_BELOW)
        && (likelyToDo() ? missingMm() : missingMm() - likelyMm()) >= LEAST_MM
        && prospect.mowingSeason().contains(today.on());
  }

  private static double rainMm(DaysAhead.Season season) {
    double sum = 0;
    for (int day = 1; day <= RAIN_LOOK_DAYS; day++) {
      sum += season.rainMm()[day];
    }
    return sum;
  }

  private double missingMm() {
    return prospect.today().soilWaterMissingMm();
  }

  /** Rain of the days ahead in the middle of the possible seasons, mm. */
  private double likelyMm() {
    return prospect.medianOf(WateringAdvice::rainMm);
  }

  /** True where rain likely brings half or more of what is missing. */
  private boolean likelyToDo() {
    return 2 * likelyMm() >= missingMm();
  }

  private double neededMm() {
    return Math.min(rules.threshold(CallRule.WATER_AT_ONCE), missingMm() - likelyMm());
  }

  private String forGrowth() {
    String dry =
        say(
            "The root zone holds %s and lacks %s; %s rain is likely within three days (middle of the possible seasons)",
            Words.ofCapacity(prospect.today().soilWaterFraction()),
            reader.water(missingMm()),
            likelyMm() < 1 ? "hardly any" : reader.water(likelyMm()) + " of");
    if (likelyToDo()) {
      return dry + ": wait for it, and water no more than what is missing after it.";
    }
    return allowedDay()
        .map(
            day ->
                say(
                    "%s: if it is to stay green, water %s %s, best early in the morning, so that leaves are dry by noon; else let it go to rest and keep off.",
                    dry, reader.height(neededMm()), when(day)))
        .orElse(dry + ". Watering is not allowed: raise the cut, and let it go to rest.");
  }

  /** First day of the week ahead on which watering is allowed. */
  private Optional<Integer> allowedDay() {
    return known.facts().wateringLimits().firstAllowed(prospect.today().on(), DAYS_AHEAD);
  }

  private String when(int day) {
    WateringLimits limits = known.facts().wateringLimits();
    return days.when(day) + hours(limits.from(), limits.to());
  }

  private static String hours(@Nullable LocalTime from, @Nullable LocalTime to) {
    return from == null || to == null ? "" : say(" between %s and %s", from, to);
  }
}
