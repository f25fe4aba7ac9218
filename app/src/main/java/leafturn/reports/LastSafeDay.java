package leafturn.reports;

import java.time.LocalDate;
import leafturn.advice.call.Call;

/** The last day on which a lawn can safely be mown, in words. */
public final class LastSafeDay {
  private LastSafeDay() {}

  /**
   * For instance "Last safe day, in nearly all seasons: Fri 8 May", the last on which somebody can
   * come and no more than a third comes off, said after {@link MowBy}; or why no day is safe; empty
   * where no end of the safe days is in sight.
   */
  public static String words(Call call) {
    LocalDate day = call.particulars().lastSafeDay();
    return day == null || call.mowBy() == null
        ? call.particulars().noSafeDay()
        : "Last safe day, in nearly all seasons: " + DayWords.shortDay(day);
  }
}
