package leafturn.model.lawn;

import java.time.Month;
import java.time.MonthDay;
import java.time.Year;
import org.jspecify.annotations.Nullable;

/**
 * A day that comes back every year, told by its date or by its number in the year.
 *
 * @param monthDay the date, or null when the number is given
 * @param dayOfYear 1 to 366, or 0 when the date is given
 */
public record CalendarDay(@Nullable MonthDay monthDay, int dayOfYear) {
  public CalendarDay {
    if (monthDay == null && (dayOfYear < 1 || dayOfYear > 366)) {
      throw new IllegalArgumentException(
          "a day of the year must lie from 1 to 366, but is " + dayOfYear);
    }
  }

  /** The day with this date each year; 29 February is the 28th in common years. */
  public static CalendarDay on(MonthDay monthDay) {
    return new CalendarDay(monthDay, 0);
  }

  /** The day with this number each year, 1 to 366; 366 is 31 December in common years too. */
  public static CalendarDay ofYear(int dayOfYear) {
    return new CalendarDay(null, dayOfYear);
  }

  /** Number of this day in a year, counting 29 February. */
  public int in(int year) {
    boolean leap = Year.isLeap(year);
    if (monthDay == null) {
      return Math.min(dayOfYear, leap ? 366 : 365);
    }
    Month month = monthDay.getMonth();
    return month.firstDayOfYear(leap) + Math.min(monthDay.getDayOfMonth(), month.length(leap)) - 1;
  }
}
