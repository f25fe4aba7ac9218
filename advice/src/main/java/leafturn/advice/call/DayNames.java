package leafturn.advice.call;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days as a person names them on the day of a call. */
record DayNames(LocalDate on) {
  private static final int WEEK = 7;
  private static final DateTimeFormatter WEEKDAY = formatter("EEEE");
  private static final DateTimeFormatter WEEKDAY_AND_DATE = formatter("EEEE d MMMM");
  private static final DateTimeFormatter DATE = formatter("d MMMM");

  /** "today", "tomorrow", "Saturday", or with the date from a week ahead. */
  String name(int day) {
    if (day == 0) {
      return "today";
    }
    if (day == 1) {
      return "tomorrow";
    }
    LocalDate date = on.plusDays(day);
    return day < WEEK ? WEEKDAY.format(date) : WEEKDAY_AND_DATE.format(date);
  }

  /** The same after a verb: "today", "tomorrow", "on Saturday". */
  String when(int day) {
    return day < 2 ? name(day) : "on " + name(day);
  }

  /** "4 June". */
  static String date(LocalDate day) {
    return DATE.format(day);
  }

  private static DateTimeFormatter formatter(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
