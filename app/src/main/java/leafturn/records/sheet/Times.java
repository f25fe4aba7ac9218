package leafturn.records.sheet;

import java.time.LocalTime;
import java.util.regex.Pattern;
import leafturn.records.Faults;
import leafturn.records.JsonObject;
import org.jspecify.annotations.Nullable;

/** Times of day in sheets: hours and minutes. */
final class Times {
  private static final Pattern SHAPE = Pattern.compile("([01]\\d|2[0-3]):[0-5]\\d");

  private Times() {}

  /** The time in a field, or null when it is missing or wrong. */
  static @Nullable LocalTime read(JsonObject json, String name) {
    String text = json.text(name);
    if (text == null) {
      return null;
    }
    if (!SHAPE.matcher(text).matches()) {
      json.fault(name, Faults.quoted(text) + " is not a time; write hours and minutes as 07:30.");
      return null;
    }
    return LocalTime.parse(text);
  }
}
