package leafturn.reports;

import leafturn.advice.call.Call;
import leafturn.advice.call.Choice;
import leafturn.advice.call.CutKind.NitrogenAtFirst;
import leafturn.advice.call.LyingCut;
import leafturn.advice.call.Option;
import leafturn.advice.call.Option.Outcome;
import leafturn.advice.call.OwnSight;
import leafturn.advice.call.Spread;
import org.jspecify.annotations.Nullable;

/** What a choice would do, in the words of the trade. */
public final class OutcomeWords {
  /** Said where the model has no answer or the lawn's description lacks what it needs. */
  public static final String NOT_KNOWN = "not known";

  private OutcomeWords() {}

  /**
   * Clump risk in a word, from the index and the limits of the call's rules; possible where only
   * some seasons pass the lower one.
   */
  public static String clumping(Spread clumpIndex, Call.Limits limits) {
    if (clumpIndex.high() <= 0) {
      return "none";
    }
    if (clumpIndex.middle() > limits.heavyClumpIndex()) {
      return "very likely";
    }
    if (clumpIndex.middle() > limits.clumpIndex()) {
      return "likely";
    }
    return clumpIndex.high() > limits.clumpIndex() ? "possible" : "unlikely";
  }

  /** Bags to be emptied, the last one perhaps not full: "3 bags", "2–4 bags". */
  public static SpreadWords bags(@Nullable Spread bags) {
    if (bags == null) {
      return SpreadWords.only(NOT_KNOWN);
    }
    if (bags.high() <= 0) {
      return SpreadWords.only("no bags");
    }
    Spread begun =
        new Spread(Math.ceil(bags.low()), Math.ceil(bags.middle()), Math.ceil(bags.high()));
    return counted(begun, "bag");
  }

  /** A spread of days: "20 days", "17–24 days". */
  public static SpreadWords days(@Nullable Spread days) {
    return days == null ? SpreadWords.only(NOT_KNOWN) : counted(days, "day");
  }

  /** A spread of minutes: "24 minutes", "22–27 minutes". */
  public static SpreadWords minutes(@Nullable Spread minutes) {
    return minutes == null ? SpreadWords.only(NOT_KNOWN) : counted(minutes, "minute");
  }

  private static SpreadWords counted(Spread spread, String one) {
    SpreadWords words = QuantityWords.whole(spread, one + "s");
    return Math.round(spread.middle()) == 1
        ? new SpreadWords(QuantityWords.whole(1, one), words.ends(), words.unit())
        : words;
  }

  /** Why clippings may be out of sight long before they have broken down. */
  public static final String SEEN_AND_BROKEN_DOWN =
      "Practice has short young clippings gone in weeks, a month at most; litter bags have nine"
          + " tenths broken down in about twelve weeks. Both may be right: people see what lies on"
          + " top, and short pieces sink between the leaves long before they have rotted, while a"
          + " bag counts what nobody sees any more and keeps larger soil animals out. How long"
          + " clippings are seen is our judgement, from their length, load and wetness; each log"
          + " entry ‘clippings still seen’, or looked for and not there, moves this lawn’s own"
          + " figure.";

  /** What was learned of a lawn's clippings in sight: "1.3 times as long as usual, 3 looks". */
  public static String ownSight(OwnSight own) {
    return QuantityWords.quantity(own.times(), "")
        + " times as long as usual, after "
        + own.looks()
        + (own.looks() == 1 ? " look" : " looks");
  }

  /** What the clippings do to the soil's nitrogen in their first weeks. */
  public static String nitrogenAtFirst(Outcome outcome) {
    NitrogenAtFirst verdict = outcome.kind().nitrogenAtFirst();
    if (verdict == null) {
      return "nothing is cut";
    }
    return outcome.nutrientsStay() ? atFirst(verdict) : takenAway(outcome);
  }

  /** Said instead of what becomes of clippings in the turf, where they or a part leave it. */
  public static String takenAway(Outcome outcome) {
    return outcome.collectedInPart() ? "taken away in part" : "taken away";
  }

  /** A past cut whose clippings still lie on the turf, in a line. */
  public static String lying(LyingCut cut, UnitWords units) {
    return "%s%s: %s %s, %s of it still there; C:N %s, soil nitrogen at first: %s; %s"
        .formatted(
            DayWords.day(cut.day()),
            cut.logged() ? "" : " (reckoned, not logged)",
            units.onArea(Spread.exactly(cut.dryGPerM2())).middle(),
            units.units().told("returned"),
            QuantityWords.percent(cut.leftFraction()),
            QuantityWords.whole(cut.carbonPerNitrogen(), ": 1"),
            atFirst(cut.nitrogenAtFirst()),
            cut.stillSeen() ? "probably still seen" : "probably no longer seen");
  }

  /** What fresh clippings do to the soil's nitrogen at first. */
  public static String atFirst(NitrogenAtFirst verdict) {
    return switch (verdict) {
      case FREED -> "some freed";
      case EITHER_WAY -> "either way";
      case TIED_UP -> "some tied up";
    };
  }

  /** What becomes of the nitrogen in the clippings. */
  public static String nitrogenFate(Option option) {
    if (option.outcome().nitrogenG().high() <= 0) {
      return "nothing is cut";
    }
    if (option.outcome().nutrientsStay()) {
      return "stays; about a third feeds the grass again";
    }
    if (option.outcome().collectedInPart()) {
      return QuantityWords.percent(option.outcome().collectedFraction())
          + " leaves with the clippings, the rest stays";
    }
    return option.choice() == Choice.MOW_AND_COLLECT
        ? "goes to the heap or a bed"
        : "leaves with the clippings";
  }

  /** Whether what is in the clippings stays in the turf: "stay", "leave", "38 % leave". */
  public static String whereTo(Outcome outcome) {
    if (outcome.nutrientsStay()) {
      return "stay";
    }
    return outcome.collectedInPart()
        ? QuantityWords.percent(outcome.collectedFraction()) + " leave"
        : "leave";
  }
}
