package leafturn.reports;

import java.time.LocalDate;
import leafturn.advice.call.Call;

/** The last day on which a lawn can safely be mown, in words. */
public final class LastSafeDay {
  private LastSafeDay() {}

  /**
   * For instance "Whoever mows can come before that on Fri 8 May at the latest", said after {@link
   * MowBy}, or why no day is safe; empty where no end of the safe days is in sight.
   */
  public static String words(Call call) {
    LocalDate day = call.particulars().lastSafeDay();
    return day == null || call.mowBy() == null
        ? call.particulars().noSafeDay()
        : "Whoever mows can come before that on %s at the latest".formatted(DayWords.shortDay(day));
  }
}
