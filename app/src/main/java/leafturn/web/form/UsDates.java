package leafturn.web.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Units;
import leafturn.records.Dates;

/** Dates with the month first, as whoever uses US units writes them where no calendar opens. */
final class UsDates {
  private static final Pattern MONTH_FIRST = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");

  private UsDates() {}

  /** The ISO date of what was typed, or what was typed where it is no day with its month first. */
  static String read(String typed, Units units) {
    Matcher parts = MONTH_FIRST.matcher(typed);
    if (units != Units.US || !parts.matches()) {
      return typed;
    }
    String iso =
        "%s-%2s-%2s".formatted(parts.group(3), parts.group(1), parts.group(2)).replace(' ', '0');
    return Dates.parse(iso) == null ? typed : iso;
  }

  /** A fault with the way in which its reader writes dates. */
  static String told(String sentence, Units units) {
    return units == Units.US
        ? sentence
            .replace("year, month and day as in 2015-05-28", "month, day and year as in 05/28/2015")
            .replace("such as 2015-05-28", "such as 05/28/2015")
        : sentence;
  }
}
