package leafturn.records;

import java.time.LocalDate;
import java.time.MonthDay;
import leafturn.model.lawn.CalendarDay;

/**
 * The mowing season of a lawn that says none, half a year later south of the equator.
 *
 * @param from its first day
 * @param to its last day
 */
public record UsualSeason(CalendarDay from, CalendarDay to) {
  private static final int FROM_DAY_OF_YEAR = 75;
  private static final int TO_DAY_OF_YEAR = 345;
  private static final int HALF_A_YEAR_DAYS = 182;
  private static final int COMMON_YEAR = 2015;

  /** Its length. */
  static final int DAYS = TO_DAY_OF_YEAR - FROM_DAY_OF_YEAR + 1;

  /**
   * @param southern true for a site south of the equator
   */
  public static UsualSeason of(boolean southern) {
    return southern
        ? new UsualSeason(
            CalendarDay.ofYear(FROM_DAY_OF_YEAR + HALF_A_YEAR_DAYS),
            CalendarDay.ofYear(TO_DAY_OF_YEAR - HALF_A_YEAR_DAYS))
        : new UsualSeason(CalendarDay.ofYear(FROM_DAY_OF_YEAR), CalendarDay.ofYear(TO_DAY_OF_YEAR));
  }

  /** A day as programmes have it: the date of a common year, "MM-DD". */
  public static String monthDay(CalendarDay day) {
    return dated(day).toString().substring(2);
  }

  /** The date that a day has in a common year. */
  public static MonthDay dated(CalendarDay day) {
    MonthDay given = day.monthDay();
    return given != null
        ? given
        : MonthDay.from(LocalDate.ofYearDay(COMMON_YEAR, day.in(COMMON_YEAR)));
  }
}
