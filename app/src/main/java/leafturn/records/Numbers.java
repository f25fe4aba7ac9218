package leafturn.records;

import java.util.regex.Pattern;
import leafturn.quantity.DisplayNumber;
import org.jspecify.annotations.Nullable;

/** Numbers as people write them. */
public final class Numbers {
  private static final double LONG_NUMBER = 1e15;
  private static final Pattern TWO_READINGS = Pattern.compile("[-+]?[1-9]\\d{0,2}(,\\d{3})+");

  private Numbers() {}

  /** A number without needless zeros: 76 for 76.0, 3.675; with an exponent where it is huge. */
  public static String plain(double value) {
    return Math.abs(value) < LONG_NUMBER ? DisplayNumber.plain(value) : Double.toString(value);
  }

  /** A range for a message: "from 0 to 1"; "equal to 2" where it is a single number. */
  public static String range(double low, double high) {
    if (low == high) {
      return "equal to " + plain(low);
    }
    return "from " + plain(low) + " to " + plain(high);
  }

  /** What is wrong with a text that some read as thousands and others as a fraction, or null. */
  public static @Nullable String commaFault(String text) {
    if (!TWO_READINGS.matcher(text).matches()) {
      return null;
    }
    String thousands = text.replace(",", "");
    return text.indexOf(',') == text.lastIndexOf(',')
        ? "%s has a comma: write %s if it parts thousands, %s if it is a decimal comma."
            .formatted(Faults.quoted(text), thousands, text.replace(',', '.'))
        : "%s has commas between thousands; write %s.".formatted(Faults.quoted(text), thousands);
  }

  /** A unit after a comma, or nothing where there is none. */
  static String comma(String unit) {
    return unit.isEmpty() ? "" : ", " + unit;
  }
}
