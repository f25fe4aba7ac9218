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

  /** A share of the possible seasons: "28 % of the possible seasons", "all possible seasons". */
  static String ofSeasons(double fraction) {
    String share = percent(fraction);
    return fraction == 1
        ? "all possible seasons"
        : (share.equals(percent(1)) ? "nearly all" : share + " of the") + " possible seasons";
  }

  /** Water in the soil: "28 % of the water it can hold", "hardly any of the water it can hold". */
  static String ofCapacity(double fraction) {
    String share = percent(fraction);
    String part =
        share.equals(percent(0)) ? "hardly any of" : fraction >= 1 ? "all" : share + " of";
    return part + " the water it can hold";
  }

  /** "1 day", "9 days". */
  static String days(double days) {
    return figure(days) + (days == 1 ? " day" : " days");
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
