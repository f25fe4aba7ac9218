package leafturn.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Numbers as people read them: rounded half away from zero, a point as decimal mark, a thin gap
 * between thousands, and the same on every machine whatever its locale.
 */
public final class DisplayNumber {
  /**
   * Narrow no-break space, the group mark of ISO 80000-1, which neither wraps nor reads as a point.
   */
  public static final char THOUSANDS_GAP = '\u202f';

  private static final int MINUS_SIGN = '\u2212';
  private static final int GROUP = 3;
  private static final int DIGITS_LEFT_UNGROUPED = 4;
  private static final int MOST_PLACES = 15;

  private DisplayNumber() {}

  /**
   * A number rounded to a count of significant digits, trailing zeros kept where they carry the
   * precision: 1.997 at 3 digits reads 2.00, and 12345 at 3 digits reads 12 300 with a gap. Beyond
   * 15 places before or after the point a power of ten stands in: 1.00 × 10^30.
   *
   * @param significantDigits 1 to 15
   * @return "–" for NaN, the word "unbounded" for an infinite value
   */
  public static String significant(double value, int significantDigits) {
    requireDigits(significantDigits, 1);
    if (!Double.isFinite(value)) {
      return special(value);
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).round(new MathContext(significantDigits, RoundingMode.HALF_UP));
    int leadingDigits = rounded.precision() - rounded.scale();
    if (Math.abs(leadingDigits) > MOST_PLACES) {
      return scientific(rounded, leadingDigits - 1, significantDigits - 1);
    }
    int decimals = Math.max(0, significantDigits - leadingDigits);
    return grouped(rounded.setScale(decimals, RoundingMode.HALF_UP));
  }

  /**
   * A number rounded to a fixed count of decimals, for columns.
   *
   * @param decimals 0 to 15
   * @return "–" for NaN, the word "unbounded" for an infinite value
   */
  public static String decimals(double value, int decimals) {
    requireDigits(decimals, 0);
    return Double.isFinite(value)
        ? grouped(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP))
        : special(value);
  }

  /** A rounded number and its unit with a space that does not wrap between: "1.3 mm". */
  public static String withUnit(double value, int significantDigits, String unit) {
    String number = significant(value, significantDigits);
    return unit.isEmpty() || Double.isNaN(value) ? number : number + '\u00a0' + unit;
  }

  /** A count with its word, in the plural unless it is one: "1 core", "1,200 cores". */
  public static String counted(long count, String one) {
    return "%,d %s%s".formatted(count, one, count == 1 ? "" : "s");
  }

  /** All digits without grouping or exponent, for messages and files: -90, 0.00665. */
  public static String plain(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value + 0.0).stripTrailingZeros().toPlainString()
        : Double.toString(value);
  }

  private static String scientific(BigDecimal number, int exponent, int decimals) {
    BigDecimal factor =
        number.scaleByPowerOfTen(-exponent).setScale(decimals, RoundingMode.HALF_UP);
    return grouped(factor) + " × 10^" + exponent;
  }

  private static String special(double value) {
    if (Double.isNaN(value)) {
      return "–";
    }
    return value > 0 ? "unbounded" : "unbounded below";
  }

  private static String grouped(BigDecimal number) {
    String digits = number.abs().toPlainString();
    int point = digits.indexOf('.');
    String whole = point < 0 ? digits : digits.substring(0, point);
    StringBuilder text = new StringBuilder(whole);
    if (whole.length() > DIGITS_LEFT_UNGROUPED) {
      for (int place = whole.length() - GROUP; place > 0; place -= GROUP) {
        text.insert(place, THOUSANDS_GAP);
      }
    }
    if (point >= 0) {
      text.append(digits, point, digits.length());
    }
    return number.signum() < 0 ? text.insert(0, (char) MINUS_SIGN).toString() : text.toString();
  }

  private static void requireDigits(int digits, int low) {
    if (digits < low || digits > 15) {
      throw new IllegalArgumentException(
          "the number of digits is %d, but must lie from %d to 15".formatted(digits, low));
    }
  }
}
