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
    if (day != null) {
      return "Last safe day, in nearly all seasons: " + DayWords.shortDay(day);
    }
    // Of a cut of today it is said already that more would come off.
    boolean told = call.on().equals(call.mowOn()) && call.mowBy() != null;
    return told ? "" : call.particulars().noSafeDay();
  }
}
