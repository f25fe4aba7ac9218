package leafturn.advice.call;

import static leafturn.advice.call.Words.figure;
import static leafturn.advice.call.Words.mm;
import static leafturn.advice.call.Words.percent;
import static leafturn.advice.call.Words.say;

/** A rule's finding on a day in words: number, meaning, threshold and source. */
final class ReasonWords {
  private final Prospect prospect;
  private final CallRules rules;
  private final DayNames days;

  ReasonWords(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.days = new DayNames(prospect.today().on());
  }

  /** The finding of a rule on a day, as a reason for or against mowing and returning. */
  Reason reason(CallRule rule, int day, boolean against) {
    return switch (rule) {
      case SEASON, LEAST_GROWTH, DUE, HARDLY_GROWING -> timing(rule, day, against);
      case FROST, SATURATED, SOFT_GROUND, HEAT, WET -> ground(rule, day, against);
      default -> cut(rule, day, against);
    };
  }

  private Reason timing(CallRule rule, int day, boolean against) {
    double lengthMm = prospect.lengthMm(day, prospect.cutHeightMm());
    return switch (rule) {
      case SEASON ->
          written(
              rule,
              "Outside the mowing season",
              "By its own programme this lawn is not mown " + days.when(day) + ".",
              say(
                  "season from %s to %s",
                  DayNames.date(prospect.mowingSeason().startBefore(prospect.date(day))),
                  DayNames.date(
                      prospect
                          .mowingSeason()
                          .endAfter(prospect.mowingSeason().startBefore(prospect.date(day))))),
              against);
      case LEAST_GROWTH ->
          written(
              rule,
              say("%s to cut", mm(lengthMm)),
              say(
                  "So little above the cut height of %s is not worth a pass of the mower %s.",
                  mm(prospect.cutHeightMm()), days.when(day)),
              "at least " + mm(rules.threshold(rule)),
              against);
      case HARDLY_GROWING ->
          written(
              rule,
              "Hardly growing",
              say(
                  "Leaf grew %.2f g/m² a day last week, and the soil holds %s of the water it can. Grass at rest in drought is best left alone.",
                  prospect.today().recentGrowthGPerM2(),
                  percent(prospect.today().soilWaterFraction())),
              say(
                  "at rest below %s g/m² a day with less than %s of the water",
                  figure(rules.threshold(rule)), percent(rules.threshold(CallRule.DRY_SOIL))),
              against);
      default -> due(day, against);
    };
  }

  private Reason due(int day, boolean against) {
    String taken = taken(prospect.heightMm(day), prospect.cutHeightMm());
    if (prospect.mowing().byOneThirdRule()) {
      return written(
          CallRule.DUE,
          taken + " of the height",
          say(
              "would come off %s. This lawn is mown when about a third would; sooner only makes work.",
              days.when(day)),
          "from " + percent(rules.threshold(CallRule.DUE)),
          against);
    }
    long since = Math.round(prospect.today().daysSinceMowing()) + day;
    return written(
        CallRule.DUE,
        say("%d days since the last mowing", since),
        say("%s of the height would come off %s.", taken, days.when(day)),
        say("mown every %d days", prospect.mowing().everyDays()),
        against);
  }

  private Reason ground(CallRule rule, int day, boolean against) {
    double threshold = rules.threshold(rule);
    return switch (rule) {
      case FROST ->
          written(
              rule,
              say("Down to %.1f °C", prospect.medianOf(s -> s.minimumC()[day])),
              say(
                  "Grass can be colder than the air and frozen %s; frozen leaves break underfoot.",
                  days.when(day)),
              say("frost possible at %s °C or less", figure(threshold)),
              against);
      case SATURATED ->
          written(
              rule,
              "Soil full of water",
              say(
                  "The root zone holds %s of the water it can %s; wheels press and smear such soil.",
                  percent(prospect.medianOf(s -> s.soilWaterFraction()[day])), days.when(day)),
              "limit " + percent(threshold),
              against);
      case SOFT_GROUND ->
          written(
              rule,
              say(
                  "%.0f mm of water in three days",
                  prospect.medianOf(s -> s.waterOfThreeDaysBeforeMm(day))),
              "The ground is likely too soft for wheels " + days.when(day) + ".",
              say("limit %s mm", figure(threshold)),
              against);
      case HEAT ->
          written(
              rule,
              say("Up to %.0f °C", prospect.medianOf(s -> s.maximumC()[day])),
              "Too hot for a cool-season grass to grow; a cut costs it shade and water "
                  + days.when(day)
                  + ".",
              say("limit %s °C", figure(threshold)),
              against);
      default ->
          written(
              rule,
              "Leaves likely wet " + days.name(day),
              say(
                  "%.1f mm of rain or water %s, %.1f mm the day before. Wet clippings cling and clump, and wet slopes are slippery. Dew is not in this.",
                  prospect.medianOf(s -> s.waterMm(day)),
                  days.when(day),
                  prospect.medianOf(s -> s.waterMm(day - 1))),
              say(
                  "wet above %s mm, or %s mm the day before",
                  figure(threshold), figure(rules.threshold(CallRule.WET_YESTERDAY))),
              against);
    };
  }

  private Reason cut(CallRule rule, int day, boolean against) {
    double heightMm = prospect.heightMm(day);
    double lengthMm = prospect.lengthMm(day, prospect.cutHeightMm());
    double threshold = rules.threshold(rule);
    return switch (rule) {
      case HALF ->
          written(
              rule,
              taken(heightMm, prospect.cutHeightMm()) + " of the height",
              say(
                  "would come off %s, from %s to %s: too much to leave lying. Collect, and step the height down over several mowings.",
                  days.when(day), mm(heightMm), mm(prospect.cutHeightMm())),
              "limit " + percent(threshold),
              against);
      case ONE_THIRD ->
          written(
              rule,
              taken(heightMm, prospect.cutHeightMm()) + " of the height",
              say(
                  "comes off %s, from %s to %s. Taking more than a third at once sets roots back.",
                  days.when(day), mm(heightMm), mm(prospect.cutHeightMm())),
              "limit a third",
              against);
      case LENGTH ->
          written(
              rule,
              "Pieces up to " + mm(lengthMm),
              "Such long pieces lie on top of the turf instead of falling between the leaves.",
              "limit " + mm(threshold),
              against);
      default -> clumps(rule, day, lengthMm, against);
    };
  }

  private Reason clumps(CallRule rule, int day, double lengthMm, boolean against) {
    boolean wet = prospect.wet(day);
    double dry = prospect.dryGPerM2(lengthMm);
    double limit = rules.threshold(wet ? CallRule.CLUMP_LIMIT_WET : CallRule.CLUMP_LIMIT_DRY);
    return written(
        rule,
        say("Clump index %.1f", prospect.clumpIndex(dry, wet)),
        say(
            "%.0f g of dry clippings per m² %s, %s times as much where they lie thickest, against the %.0f g that %s turf takes up.",
            dry,
            days.when(day),
            figure(rules.threshold(CallRule.DECK_FACTOR)),
            limit,
            wet ? "wet" : "dry"),
        say("limit %s at %s g/m²", figure(rules.threshold(rule)), figure(limit)),
        against);
  }

  /** A reason with the source and status of its rule. */
  Reason written(
      CallRule rule, String headline, String meaning, String threshold, boolean against) {
    RuleEntry entry = rules.entry(rule);
    return new Reason(
        rule.id(), headline, meaning, threshold, entry.source(), entry.status(), against);
  }

  /** Share of the height that a cut takes. */
  static String taken(double heightMm, double toMm) {
    return percent(Prospect.takenFraction(heightMm, toMm));
  }
}
