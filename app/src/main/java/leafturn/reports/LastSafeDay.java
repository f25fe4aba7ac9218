package leafturn.reports;

import java.time.LocalDate;
import leafturn.advice.call.Call;
import leafturn.quantity.ShareWords;

/** The last day on which a lawn can safely be mown, in words. */
public final class LastSafeDay {
  private LastSafeDay() {}

  /**
   * For instance "Fri 8 May is the last safe day to mow: the last on which somebody can come and in
   * nearly all possible seasons no more than a third comes off", said after {@link MowBy}, or why
   * no day is safe; empty where no end of the safe days is in sight.
   */
  public static String words(Call call) {
    LocalDate day = call.particulars().lastSafeDay();
    return day == null || call.mowBy() == null
        ? call.particulars().noSafeDay()
        : "%s is the last safe day to mow: the last on which somebody can come and in nearly all possible seasons no more than %s comes off"
            .formatted(DayWords.shortDay(day), ShareWords.of(call.limits().heightTakenFraction()));
  }
}
