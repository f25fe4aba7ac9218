package leafturn.advice.call;

import java.util.List;
import java.util.Locale;
import leafturn.quantity.DisplayNumber;

/** Numbers in the sentences of a call, the same on every machine. */
final class Words {
  private Words() {}

  /** A pattern of {@link String#format} filled in. */
  static String say(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }

  /** "28 %". */
  static String percent(double fraction) {
    return say("%.0f %%", 100 * fraction);
  }

  /** A small count: "two". */
  static String count(int count) {
    return switch (count) {
      case 2 -> "two";
      case 3 -> "three";
      case 4 -> "four";
      case 5 -> "five";
      default -> Integer.toString(count);
    };
  }

  /** Parts in a row: "28 %, 27 % and 25 %". */
  static String list(List<String> parts) {
    int last = parts.size() - 1;
    return last < 1
        ? String.join("", parts)
        : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
  }

  /** A threshold as it was set, without trailing zeros. */
  static String figure(double value) {
    return DisplayNumber.plain(value);
  }
}
