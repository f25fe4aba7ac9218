package leafturn.advice.evidence;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What the model gave for a target.
 *
 * @param id of the target
 * @param values one number, or several that must all lie in the band
 * @param detail what stands behind it, empty when nothing does
 */
record Measured(String id, List<Double> values, String detail) {
  Measured {
    values = List.copyOf(values);
  }

  static Measured of(String id, double value, String detail, Object... parts) {
    return new Measured(id, List.of(value), String.format(Locale.ROOT, detail, parts));
  }

  static Measured several(String id, String detail, double... values) {
    return new Measured(id, Arrays.stream(values).boxed().toList(), detail);
  }

  /** A number with a fixed count of decimals. */
  static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
