package leafturn.reports;

import java.time.LocalDate;
import leafturn.advice.call.Call;

/** The last day on which a lawn can safely be mown, in words. */
public final class LastSafeDay {
  private LastSafeDay() {}

  /** For instance "Last safe day to mow: Fri 8 May"; empty where there is none or none in sight. */
  public static String words(Call call) {
    LocalDate day = call.particulars().lastSafeDay();
    return day == null || call.mowBy() == null
        ? ""
        : "Last safe day to mow: " + DayWords.shortDay(day);
  }
}
