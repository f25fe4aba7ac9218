package leafturn.records.trial;

import java.util.Arrays;
import java.util.List;
import leafturn.records.JsonObject;
import leafturn.records.JsonValue;
import leafturn.records.Numbers;
import org.jspecify.annotations.Nullable;

/** Fields of a trial's size that have open ends or are one of several words. */
final class SizeFields {
  /** Beyond this a number has the wrong unit. */
  static final double LARGEST = 1e9;

  private SizeFields() {}

  /** A number above 0, or null when it is missing or wrong. */
  static @Nullable Double above0(JsonObject json, String name, double high, String what) {
    return between(
        json, name, 0, high, true, "%s above 0 and up to %s".formatted(what, plain(high)));
  }

  /** A number strictly between two ends, or null when it is missing or wrong. */
  static @Nullable Double inside(JsonObject json, String name, double low, double high) {
    return between(
        json,
        name,
        low,
        high,
        false,
        "a number above %s and below %s".formatted(plain(low), plain(high)));
  }

  private static @Nullable Double between(
      JsonObject json, String name, double low, double high, boolean highToo, String right) {
    JsonValue value = json.take(name);
    if (value == null) {
      return null;
    }
    if (!(value.content() instanceof Double number) || !Double.isFinite(number)) {
      json.fault(name, "%s is not a number; give %s.".formatted(value.shown(), right));
      return null;
    }
    if (!(number > low) || number > high || (number == high && !highToo)) {
      json.fault(name, "%s is out of range; give %s.".formatted(value.shown(), right));
      return null;
    }
    return number;
  }

  private static String plain(double value) {
    return Numbers.plain(value);
  }

  /** A whole number from 1, or the usual one. */
  static int count(JsonObject json, String name, int high, int usual) {
    Integer count = json.wholeNumber(name, 1, high, "");
    return count == null ? usual : count;
  }

  /** Reports a field that stands beside one that says the same. */
  static void onlyOne(JsonObject json, String... names) {
    List<String> there = Arrays.stream(names).filter(json::has).toList();
    for (int i = 1; i < there.size(); i++) {
      json.fault(there.get(i), "it stands beside %s; give one of them.".formatted(there.get(0)));
    }
  }
}
