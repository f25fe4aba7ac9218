package leafturn.advice.call;

import static leafturn.advice.call.Words.figure;
import static leafturn.advice.call.Words.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** When and how much to water: feed first, then grass at rest, then grass that runs dry. */
final class WateringAdvice {
  /** Days ahead whose rain counts. */
  static final int RAIN_LOOK_DAYS = 3;

  /** Less than this is not worth a watering, mm (our judgement). */
  private static final double LEAST_MM = 5;

  /** Rain that spares grass at rest its survival water, mm (our judgement). */
  private static final double SPARING_RAIN_MM = 10;

  /** Part of its best growth below which warm-season grass is out of season (our judgement). */
  private static final double IN_SEASON_FRACTION = 0.1;

  private final Prospect prospect;
  private final Known known;
  private final CallRules rules;
  private final Reader reader;
  private final WateringDays days;
  private final WashingIn washing;

  WateringAdvice(Prospect prospect) {
    this.prospect = prospect;
    this.known = prospect.known();
    this.rules = prospect.rules();
    this.reader = prospect.reader();
    this.days = new WateringDays(known.facts().wateringLimits(), prospect.today().on());
    this.washing = new WashingIn(prospect);
  }

  /**
   * Sentences on water; empty when there is no need of it.
   *
   * @param mown days until the lawn is mown, -1 where it is not
   * @param atRest whether it is left alone because it rests
   */
  List<String> sentences(int mown, boolean atRest) {
    List<String> sentences = new ArrayList<>();
    if (known.dryFeed().isPresent()) {
      sentences.add(new FeedWords(prospect).water());
    }
    OptionalInt washed = washing.waterDay();
    if (known.dormant().isPresent()) {
      if (washed.isEmpty()) {
        sentences.add(forSurvival());
      }
    } else if (runsDry() && inSeason()) {
      boolean late = morningGone() || washing.toBeLookedAt().isPresent();
      int from = washed.isPresent() ? 1 + washed.getAsInt() : late ? 1 : 0;
      sentences.add(forDrySoil(from, mown, atRest));
    } else if (runsDry() && known.wilting().isPresent()) {
      sentences.add(forSurvival());
    }
    return sentences;
  }

  /** True when wet leaves, water of today or the hour of a look leave no early morning today. */
  private boolean morningGone() {
    LocalDate on = prospect.today().on();
    return prospect.wetNow()
        || prospect.wet(0)
        || prospect.medianOf(season -> season.waterMm(0)) >= LEAST_MM
        || known.facts().sightings().stream()
            .filter(seen -> seen.on().equals(on))
            .flatMap(seen -> Stream.ofNullable(seen.at()))
            .anyMatch(WateringLimits.LATE::isBefore);
  }

  private String forSurvival() {
    String water = reader.height(rules.threshold(CallRule.SURVIVAL_WATER));
    String every = figure(rules.threshold(CallRule.SURVIVAL_DAYS));
    if (allowedDay(0).isEmpty()) {
      return "Watering is not allowed here now. Most grass at rest lives through some weeks of it; keep off, and water as soon as the rules let you.";
    }
    Optional<LocalDate> sparing = lastSparing();
    if (sparing.isPresent()) {
      LocalDate last = sparing.get();
      return say(
          "Grass at rest needs no water yet, for it had %s on %s. Without more by %s give %s once, to keep its crowns alive and not to wake it.",
          reader.water(rainMm(last) + wateredMm(last)),
          DayNames.date(last),
          DayNames.date(last.plusDays(survivalDays())),
          water);
    }
    if (likelyMm() >= SPARING_RAIN_MM) {
      return say(
          "Grass at rest needs no water yet: %s of rain is likely within three days (middle of the possible seasons). Without it give %s once, to keep its crowns alive and not to wake it.",
          reader.water(likelyMm()), water);
    }
    return say(
        "To keep the crowns alive, not to wake the grass, give %s %s, and again every %s days without rain.",
        water, when(allowedDay(0).get()), every);
  }

  private int survivalDays() {
    return (int) Math.round(rules.threshold(CallRule.SURVIVAL_DAYS));
  }

  /** The last day of those that count with rain worth its name, or watered as much. */
  private Optional<LocalDate> lastSparing() {
    return IntStream.range(0, survivalDays())
        .mapToObj(prospect.today().on()::minusDays)
        .filter(
            day ->
                rainMm(day) + wateredMm(day) >= SPARING_RAIN_MM
                    || wateredMm(day) >= rules.threshold(CallRule.SURVIVAL_WATER))
        .findFirst();
  }

  private double wateredMm(LocalDate day) {
    return known.wateredMm(day::equals);
  }

  private double rainMm(LocalDate day) {
    return prospect.today().past().stream()
        .filter(past -> past.day().equals(day))
        .mapToDouble(Outlook.PastDay::rainMm)
        .sum();
  }

  /**
   * @param from first day on which it may be watered
   * @param mown days until it is mown, -1 where it is not
   */
  private String forDrySoil(int from, int mown, boolean atRest) {
    if (known.newlySeeded()) {
      if (allowedDay(from).isEmpty()) {
        return "Seedlings must not dry out, the root zone is dry, and watering is not allowed: ask whether new grass is exempt, else rain alone decides whether they live (common practice, no source).";
      }
      return "Seedlings must not dry out, and the root zone is dry: water them lightly and often as far as local rules allow, and mow when the surface is firm (common practice, no source).";
    }
    return atRest && !known.wilting().isPresent() && !known.seen(Sight.GREENING_UP)
        ? forSurvival()
        : forGrowth(from, mown);
  }

  /** Grass seen wilting or dry soil, whether rain is in sight that would do or not. */
  private boolean runsDry() {
    return !prospect.standsIn()
        && (known.wilting().isPresent() || drySoil())
        && (likelyToDo() ? missingMm() : neededMm()) >= LEAST_MM;
  }

  private boolean drySoil() {
    LawnToday today = prospect.today();
    return (!prospect.watered() || known.facts().wateringLimits().banned())
        && today.soilWaterFraction() < rules.threshold(CallRule.WATER_BELOW)
        && prospect.mowingSeason().contains(today.on());
  }

  /** False for warm-season grass in days so cold that it hardly grows with any water. */
  private boolean inSeason() {
    return !prospect.warmSeasonGrass()
        || known.newlySeeded()
        || known.seen(Sight.GREENING_UP)
        || prospect.medianOf(this::growthFraction) >= IN_SEASON_FRACTION;
  }

  /** Growth that the warmth of the days ahead lets be, over the best, 0-1. */
  private double growthFraction(DaysAhead.Season season) {
    return IntStream.rangeClosed(1, RAIN_LOOK_DAYS)
        .mapToDouble(day -> (season.minimumC()[day] + season.maximumC()[day]) / 2)
        .map(prospect.today().equations()::growthAtFraction)
        .average()
        .orElse(1);
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
  boolean likelyToDo() {
    return 2 * likelyMm() >= missingMm();
  }

  /** What is missing beyond rain and feed's water, no more than is given in some days, mm. */
  private double neededMm() {
    double washedMm = washing.waterDay().isPresent() ? washing.neededMm() : 0;
    LocalDate lately = prospect.today().on().minusDays(RAIN_LOOK_DAYS);
    double lateMm = known.wateredMm(day -> day.isAfter(lately));
    return Math.min(
        rules.threshold(CallRule.WATER_AT_ONCE) - lateMm, missingMm() - likelyMm() - washedMm);
  }

  private String forGrowth(int from, int mown) {
    String dry =
        say(
            "The root zone holds %s and lacks %s; %s rain is likely within three days (middle of the possible seasons)",
            Words.ofCapacity(prospect.today().soilWaterFraction()),
            reader.water(missingMm()),
            likelyMm() < 1 ? "hardly any" : reader.water(likelyMm()) + " of");
    if (likelyToDo()) {
      return allowedDay(from).isPresent()
          ? dry + ": wait for it, and water no more than what is missing after it."
          : dry + ": wait for it, for watering is not allowed.";
    }
    boolean greening = known.seen(Sight.GREENING_UP);
    int avoided = known.wilting().isPresent() ? -1 : mown; // wilting grass waits for no mower
    return days.forGrowth(from, avoided)
        .map(
            day ->
                say(
                    "%s: %s, water %s %s; %s.",
                    dry,
                    greening
                        ? "to help it turn green"
                        : restNear() ? "if it is to stay green" : "to keep it growing",
                    reader.height(neededMm()),
                    days.whenForGrowth(day, avoided),
                    greening
                        ? "without it, it turns green more slowly"
                        : restNear()
                            ? "else it goes to rest: then do not mow it, and keep off"
                            : "without it, growth slows"))
        .orElse(dry + ". Watering is not allowed: " + unwatered(greening));
  }

  /** True where the soil is so dry that grass may soon go to rest. */
  private boolean restNear() {
    CallRule dry = known.wilting().isPresent() ? CallRule.DRY_SOIL : CallRule.DROUGHT_LOOK;
    return prospect.today().soilWaterFraction() < rules.threshold(dry);
  }

  private String unwatered(boolean greening) {
    if (greening) {
      return "it turns green more slowly.";
    }
    return known.wilting().isPresent()
        ? "keep off until it rains."
        : "once it wilts or goes to rest, do not mow it, and keep off.";
  }

  private Optional<Integer> allowedDay(int from) {
    return days.allowed(from);
  }

  private String when(int day) {
    return days.when(day);
  }
}
