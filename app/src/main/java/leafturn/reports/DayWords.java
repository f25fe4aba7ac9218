package leafturn.reports;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import leafturn.advice.call.Spread;

/** Days in the words a person uses. */
public final class DayWords {
  private static final DateTimeFormatter DAY = formatter("EEEE d MMMM");
  private static final DateTimeFormatter DAY_AND_YEAR = formatter("EEEE d MMMM uuuu");
  private static final DateTimeFormatter SHORT_DAY = formatter("EEE d MMMM");
  private static final DateTimeFormatter DATE = formatter("d\u00a0MMMM");
  private static final DateTimeFormatter DAY_OF_MONTH = formatter("d");
  private static final DateTimeFormatter MONTH = formatter("MMMM");

  private DayWords() {}

  /** For instance "Friday 29 May". */
  public static String day(LocalDate day) {
    return DAY.format(day);
  }

  /** For instance "Friday 29 May 2015". */
  public static String dayAndYear(LocalDate day) {
    return DAY_AND_YEAR.format(day);
  }

  /** For instance "Fri 29 May". */
  public static String shortDay(LocalDate day) {
    return SHORT_DAY.format(day);
  }

  /** For instance "29 May". */
  public static String date(LocalDate day) {
    return DATE.format(day);
  }

  /** For instance "May". */
  public static String month(LocalDate day) {
    return MONTH.format(day);
  }

  /** For instance "1–5 June" or "30 May–5 June". */
  public static String dates(LocalDate first, LocalDate last) {
    if (first.equals(last)) {
      return date(first);
    }
    boolean sameMonth = first.getMonth() == last.getMonth() && first.getYear() == last.getYear();
    return (sameMonth ? DAY_OF_MONTH.format(first) : date(first)) + "–" + date(last);
  }

  /** The day that lies a whole number of days, nearest to the given one, after another. */
  public static LocalDate after(LocalDate day, double days) {
    return day.plusDays(Math.round(days));
  }

  /** A spread of days from a day as dates: "Wed 3 June", "1–5 June". */
  public static SpreadWords spreadOfDays(LocalDate from, Spread days) {
    LocalDate low = after(from, days.low());
    LocalDate high = after(from, days.high());
    String middle = SHORT_DAY.format(after(from, days.middle()));
    return new SpreadWords(middle, low.equals(high) ? "" : dates(low, high), "");
  }

  private static DateTimeFormatter formatter(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }
}
