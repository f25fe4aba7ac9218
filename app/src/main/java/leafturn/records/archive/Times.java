package leafturn.records.archive;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/** Moments as archives carry them, in UTC and to the microsecond. */
final class Times {
  private static final Instant FIRST = Instant.parse("1700-01-01T00:00:00Z");
  private static final Instant LAST = Instant.parse("2201-01-01T00:00:00Z");

  private Times() {}

  /** A moment that must be there; 1970 where a fault was reported. */
  static Instant read(JsonObject json, String name) {
    String right = "a time in UTC such as 2026-05-03T10:15:30Z";
    String text = json.text(name);
    if (text == null) {
      if (!json.has(name)) {
        json.missing(name, right);
      }
      return Instant.EPOCH;
    }
    Instant time = parse(text);
    if (time == null) {
      json.fault(name, Faults.quoted(text) + " is no time; give " + right + ".");
      return Instant.EPOCH;
    }
    return time;
  }

  private static @Nullable Instant parse(String text) {
    try {
      Instant time = Instant.parse(text);
      boolean possible = !time.isBefore(FIRST) && time.isBefore(LAST);
      return possible && time.equals(time.truncatedTo(ChronoUnit.MICROS)) ? time : null;
    } catch (DateTimeParseException e) {
      return null;
    }
  }
}
