package leafturn.web;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Points in time in the words a person uses. */
final class Moments {
  private static final DateTimeFormatter FORM =
      DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm z", Locale.ENGLISH);

  private Moments() {}

  /** For instance "3 May 2026, 10:15 UTC". */
  static String words(Instant moment, ZoneId zone) {
    return FORM.format(moment.atZone(zone));
  }

  /** A short wait, for instance "30 seconds" or "2 minutes"; never less than it is. */
  static String wait(Duration wait) {
    long seconds = Math.max(1, wait.toSeconds() + (wait.getNano() > 0 ? 1 : 0));
    if (seconds <= 90) {
      return seconds == 1 ? "one second" : seconds + " seconds";
    }
    return (seconds + 59) / 60 + " minutes";
  }
}
