package leafturn.advice.call;

import static leafturn.advice.call.Words.figure;
import static leafturn.advice.call.Words.percent;
import static leafturn.advice.call.Words.say;

import java.time.LocalDate;

/** A rule's finding on a day in words: number, meaning, threshold and source. */
final class ReasonWords {
  private final Prospect prospect;
  private final CallRules rules;
  private final Reader reader;
  private final DayNames days;
  private final DayReasonWords dayWords;
  private final KnownReasonWords knownWords;

  ReasonWords(Prospect prospect) {
    this.prospect = prospect;
    this.rules = prospect.rules();
    this.reader = prospect.reader();
    this.days = new DayNames(prospect.today().on());
    this.dayWords = new DayReasonWords(prospect);
    this.knownWords = new KnownReasonWords(prospect);
  }

  /** The finding of a rule on a day, as a reason for or against mowing and returning. */
  Reason reason(CallRule rule, int day, boolean against) {
    return switch (rule) {
      case SEASON -> season(day, against);
      case LEAST_GROWTH -> leastGrowth(day, against);
      case HARDLY_GROWING -> atRest(against);
      case DUE -> due(day, against);
      case FROST, SATURATED, SOFT_GROUND, HEAT, WET -> dayWords.reason(rule, day, against);
      case HALF -> half(day, against);
      case ONE_THIRD -> third(day, against);
      case LENGTH -> length(day, against);
      case CLUMPS, CLUMPS_HEAVY -> clumps(rule, day, against);
      default -> knownWords.reason(rule, day, against);
    };
  }

  private Reason season(int day, boolean against) {
    MowingSeason season = prospect.mowingSeason();
    LocalDate from = season.startBefore(prospect.date(day));
    return written(
        CallRule.SEASON,
        "Outside the mowing season",
        "By its own programme this lawn is not mown " + days.when(day) + ".",
        say("season from %s to %s", DayNames.date(from), DayNames.date(season.endAfter(from))),
        against);
  }

  private Reason leastGrowth(int day, boolean against) {
    return written(
        CallRule.LEAST_GROWTH,
        say("%s to cut", reader.height(lengthMm(day))),
        say(
            "So little above the cut height of %s is not worth a pass of the mower %s.",
            reader.height(prospect.cutHeightMm()), days.when(day)),
        "at least " + reader.height(rules.threshold(CallRule.LEAST_GROWTH)),
        against);
  }

  private Reason atRest(boolean against) {
    return written(
        CallRule.HARDLY_GROWING,
        "Hardly growing",
        say(
            "%s, and the soil holds %s. Grass at rest in drought is best left alone.",
            Double.isNaN(prospect.known().measuredGrowthMmPerDay(prospect.cutHeightMm()))
                ? say(
                    "Leaf is reckoned to have grown %s a day last week; nobody has seen whether it rests",
                    reader.onArea(prospect.today().recentGrowthGPerM2(), ""))
                : "By the heights measured it has hardly grown of late",
            Words.ofCapacity(prospect.today().soilWaterFraction())),
        say(
            "at rest below %s a day with less than %s of the water",
            reader.onArea(rules.threshold(CallRule.HARDLY_GROWING), ""),
            percent(rules.threshold(CallRule.DRY_SOIL))),
        against);
  }

  private Reason due(int day, boolean against) {
    if (prospect.known().newlySeeded()) {
      return firstCut(day, against);
    }
    String taken = taken(prospect.heightMm(day), prospect.cutHeightMm());
    if (day == 0 && !against && prospect.due().aheadOfWet()) {
      return aheadOfWet(taken);
    }
    if (prospect.mowing().byOneThirdRule()) {
      return written(
          CallRule.DUE,
          taken + " of the height",
          say(
              "would come off %s. From the limit up to %s any good day will do; sooner only makes work.",
              days.when(day), prospect.rules().third()),
          "from " + percent(rules.threshold(CallRule.DUE)),
          against);
    }
    long since = Math.round(prospect.today().daysSinceMowing()) + day;
    return written(
        CallRule.DUE,
        say("%s since the last mowing", Words.days(since)),
        say(
            "%s%s of the height %s %s.",
            against ? "" : "its interval is over. ",
            taken,
            against ? "would come off" : "comes off",
            days.when(day)),
        prospect.mowing().everyDays() == 1
            ? "mown every day"
            : say("mown every %d days", prospect.mowing().everyDays()),
        against);
  }

  private Reason aheadOfWet(String taken) {
    int next = prospect.due().firstDueVisit();
    return written(
        CallRule.DUE,
        "Dry before a wet day",
        say(
            "%s of the height comes off today. The next cut would be due %s, on leaves that are likely wet.",
            taken, days.when(next)),
        next == 1
            ? "no limit on the day before"
            : "from " + percent(rules.threshold(CallRule.DUE)) + " on",
        false);
  }

  private Reason firstCut(int day, boolean against) {
    if (!prospect.due().rooted(day)) {
      LocalDate holds = prospect.due().seedHoldsFrom().orElseThrow();
      return written(
          CallRule.FIRST_CUT_DAYS,
          "Its seed is young",
          say(
              "A mower pulls seedlings up or presses them into the soil before their roots hold: no cut before %s, however tall the grass beside them.",
              DayNames.date(holds)),
          say("from %s after sowing", Words.days(rules.threshold(CallRule.FIRST_CUT_DAYS))),
          against);
    }
    double times = rules.threshold(CallRule.FIRST_CUT);
    return Reason.of(
        rules.entry(CallRule.FIRST_CUT),
        say("%s of a new lawn", reader.height(prospect.heightMm(day))),
        say(
            "So it stands %s. Its first cut waits for %s, %s times the cut height of %s, until its roots hold.",
            days.when(day),
            reader.height(times * prospect.cutHeightMm()),
            figure(times),
            reader.height(prospect.cutHeightMm())),
        say("from %s times", figure(times)),
        against);
  }

  private Reason half(int day, boolean against) {
    return written(
        CallRule.HALF,
        taken(prospect.heightMm(day), prospect.cutHeightMm()) + " of the height",
        say(
            "would come off %s, from %s to %s: too much to leave lying. Take it away, and step the height down.",
            days.when(day),
            reader.height(prospect.heightMm(day)),
            reader.height(prospect.cutHeightMm())),
        "limit " + percent(rules.threshold(CallRule.HALF)),
        against);
  }

  private Reason third(int day, boolean against) {
    return written(
        CallRule.ONE_THIRD,
        taken(prospect.heightMm(day), prospect.cutHeightMm()) + " of the height",
        say(
            "%s %s, from %s to %s. Taking more than %s at once sets roots back.%s",
            against ? "would come off" : "comes off",
            days.when(day),
            reader.height(prospect.heightMm(day)),
            reader.height(prospect.cutHeightMm()),
            prospect.rules().third(),
            tolerated(day)
                ? say(
                    " Up to %s still counts as %s: that is less than a day's growth, and no ruler tells it.",
                    percent(prospect.thirdAndTolerance()), prospect.rules().third())
                : ""),
        third(),
        against);
  }

  private boolean tolerated(int day) {
    double taken = Prospect.takenFraction(prospect.heightMm(day), prospect.cutHeightMm());
    return taken > rules.threshold(CallRule.ONE_THIRD) && taken <= prospect.thirdAndTolerance();
  }

  /** The limit of the one-third rule as it is set. */
  String third() {
    return "limit " + prospect.rules().third();
  }

  private Reason length(int day, boolean against) {
    return written(
        CallRule.LENGTH,
        "Pieces up to " + reader.height(prospect.passes().pieceMm(lengthMm(day), false)),
        "Such long pieces lie on top of the turf instead of falling between the leaves.",
        "limit " + reader.height(rules.threshold(CallRule.LENGTH)),
        against);
  }

  private Reason clumps(CallRule rule, int day, boolean against) {
    boolean wet = prospect.wet(day);
    double dry = prospect.dryGPerM2(lengthMm(day));
    double limit = rules.threshold(wet ? CallRule.CLUMP_LIMIT_WET : CallRule.CLUMP_LIMIT_DRY);
    return written(
        rule,
        "Clump index " + beside(prospect.clumpIndex(dry, wet), rules.threshold(rule)),
        say(
            "%s %s, %s times as much where they lie thickest, against the %s that %s turf takes up.",
            reader.load(dry),
            days.when(day),
            figure(prospect.passes().thickest(false)),
            reader.loadLimit(limit),
            wet ? "wet" : "dry"),
        say("limit %s at %s", figure(rules.threshold(rule)), reader.loadLimit(limit)),
        against);
  }

  /** A number with as many digits as tell it from its limit. */
  private static String beside(double value, double limit) {
    String coarse = say("%.1f", value);
    return coarse.equals(say("%.1f", limit)) ? say("%.2f", value) : coarse;
  }

  private double lengthMm(int day) {
    return prospect.lengthMm(day, prospect.cutHeightMm());
  }

  private Reason written(
      CallRule rule, String headline, String meaning, String threshold, boolean against) {
    return Reason.of(rules.entry(rule), headline, meaning, threshold, against);
  }

  /** Share of the height that a cut takes. */
  static String taken(double heightMm, double toMm) {
    return percent(Prospect.takenFraction(heightMm, toMm));
  }
}
