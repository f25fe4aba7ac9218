package leafturn.advice.call;

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

  /** A threshold as it was set, without trailing zeros. */
  static String figure(double value) {
    return DisplayNumber.plain(value);
  }
}
