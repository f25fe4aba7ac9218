package leafturn.reports;

import leafturn.advice.call.Call;
import leafturn.advice.call.Spread;
import leafturn.quantity.ShareWords;

/**
 * The day by which the largest share of the height that one cut should take would come off, in
 * words that are the same wherever it is told.
 */
public final class MowBy {
  private MowBy() {}

  /**
   * For instance "A third of the height would come off by Wed 3 June (1–5 June)"; a sentence
   * without its stop.
   */
  public static String words(Call call) {
    Spread mowBy = call.mowBy();
    return inSight(call) && mowBy != null
        ? comesOff(call) + " by " + DayWords.spreadOfDays(call.on(), mowBy).inLine()
        : otherwise(call);
  }

  /** The same with what the day and the range mean: "in half of the possible seasons". */
  public static String explained(Call call) {
    Spread mowBy = call.mowBy();
    if (!inSight(call) || mowBy == null) {
      return otherwise(call);
    }
    SpreadWords days = DayWords.spreadOfDays(call.on(), mowBy);
    String range = days.ends().isEmpty() ? "" : " (%s in eight of ten)".formatted(days.ends());
    return "%s by %s in half of the possible seasons%s"
        .formatted(comesOff(call), days.middle(), range);
  }

  private static boolean inSight(Call call) {
    return call.mowBy() != null && call.mowBy().high() >= 0.5;
  }

  private static String otherwise(Call call) {
    double share = call.limits().heightTakenFraction();
    double taken = 1 - call.today().cutHeightMm() / call.today().heightMm();
    String ofTheHeight = ShareWords.of(share) + " of the height would come off";
    if (call.mowBy() != null) {
      return today(call, taken);
    }
    if (taken > share) {
      return "More than " + ofTheHeight + " today already";
    }
    return call.particulars().lastSafeDay() == null
        ? "No day in sight on which " + ofTheHeight
        : "In most possible seasons no day is in sight on which " + ofTheHeight;
  }

  /** Of a share that is reached today or so early tomorrow that nobody can come before. */
  private static String today(Call call, double taken) {
    double share = call.limits().heightTakenFraction();
    long shown = Math.round(100 * taken);
    if (shown < Math.round(100 * share)) {
      return comesOff(call) + " by tomorrow";
    }
    String ofTheHeight = ShareWords.of(share) + " of the height would come off today already";
    if (taken < share) {
      return "Nearly " + ofTheHeight;
    }
    return (shown > Math.round(100 * share) ? "More than " : "About ") + ofTheHeight;
  }

  /** "A third of the height would come off". */
  private static String comesOff(Call call) {
    return ShareWords.beginning(call.limits().heightTakenFraction())
        + " of the height would come off";
  }
}
