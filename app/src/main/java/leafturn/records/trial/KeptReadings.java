package leafturn.records.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leafturn.records.InputException;
import leafturn.records.exchange.TrialGround;
import leafturn.trials.design.Outcome;
import leafturn.trials.observation.OutcomeReadings;
import leafturn.trials.observation.Reading;
import leafturn.trials.observation.UsualRange;

/**
 * What a changed plan must leave to readings that are in the book: their outcomes, values that can
 * be read, and the bags under whose codes they stand. Otherwise they could not be told from others,
 * and a data package of the trial could not be read back.
 */
public final class KeptReadings {
  private final TrialGround before;
  private final TrialGround after;

  private KeptReadings(TrialGround before, TrialGround after) {
    this.before = before;
    this.after = after;
  }

  /**
   * Refuses a plan that would take from readings what they stand for.
   *
   * @param before the ground of the plan as it stands
   * @param after that of the changed plan
   * @throws InputException with a sentence for each outcome and each day that must stay
   */
  public static void check(TrialGround before, TrialGround after, List<Reading> readings) {
    KeptReadings kept = new KeptReadings(before, after);
    Map<String, List<Reading>> lost = new LinkedHashMap<>();
    for (Reading reading : readings) {
      String why = kept.lost(reading);
      if (!why.isEmpty()) {
        lost.computeIfAbsent(why, each -> new ArrayList<>()).add(reading);
      }
    }
    if (!lost.isEmpty()) {
      throw new InputException(
          lost.entrySet().stream().map(entry -> told(entry.getKey(), entry.getValue())).toList());
    }
  }

  /** What a reading would lose, to follow "the plan must keep"; empty where it loses nothing. */
  private String lost(Reading reading) {
    if (!isReadable(before, reading)) {
      return "";
    }
    if (!isReadable(after, reading)) {
      return "the outcome %s as it is".formatted(reading.outcome());
    }
    String code = reading.sample();
    TrialGround.Bag bag = code == null ? null : before.bag(code);
    return code == null || bag == null || bag.equals(after.bag(code))
        ? ""
        : "%s bags of %s"
            .formatted(bag.holds() == Outcome.Kind.SOIL ? "its soil" : "its leaf", bag.date());
  }

  private static boolean isReadable(TrialGround ground, Reading reading) {
    Outcome outcome = ground.outcome(reading.outcome()).orElse(null);
    if (outcome == null) {
      return false;
    }
    try {
      var clean = OutcomeReadings.clean(outcome, reading, null);
      return outcome.kind() != Outcome.Kind.RATING
          || clean.belowDetection()
          || UsualRange.faults(outcome, clean.value()).isEmpty();
    } catch (IllegalArgumentException unreadable) {
      return false;
    }
  }

  private static String told(String what, List<Reading> readings) {
    Reading first = readings.get(0);
    String code = first.sample();
    return "the plan must keep %s, since the book has %,d reading%s of it (the first: %s of plot %s on %s%s); take %s back first, or leave that as it was."
        .formatted(
            what,
            readings.size(),
            readings.size() == 1 ? "" : "s",
            first.outcome(),
            first.plot(),
            first.date(),
            code == null ? "" : ", code " + code,
            readings.size() == 1 ? "it" : "them");
  }
}
