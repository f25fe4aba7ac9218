package leafturn.model.weather.generator;

import java.time.LocalDate;
import java.time.Month;

/** Days of the year counted with 29 February in every year, so that each date has one number. */
final class YearDay {
  static final int COUNT = 366;
  static final int MONTHS = 12;

  private YearDay() {}

  /** Number of a date, 0 to 365. */
  static int of(LocalDate date) {
    return date.getMonth().firstDayOfYear(true) - 1 + date.getDayOfMonth() - 1;
  }

  /** Number of a date's month, 0 to 11. */
  static int month(LocalDate date) {
    return date.getMonthValue() - 1;
  }

  /** Number of the first day of a month, 0 to 11. */
  static int firstOf(int month) {
    return Month.of(month + 1).firstDayOfYear(true) - 1;
  }

  /** Days of a month, 0 to 11, with 29 February. */
  static int lengthOf(int month) {
    return Month.of(month + 1).length(true);
  }
}
