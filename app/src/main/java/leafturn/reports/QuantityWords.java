package leafturn.reports;

import java.math.BigDecimal;
import java.math.MathContext;
import leafturn.advice.call.Spread;
import leafturn.quantity.DisplayNumber;

/**
 * Quantities as people read them: two significant digits unless a whole number says enough, and a
 * narrow no-break space before the unit.
 */
public final class QuantityWords {
  /** Narrow no-break space: keeps a number and its unit on one line. */
  public static final String THIN = "\u202f";

  private static final int SIGNIFICANT_DIGITS = 2;
  private static final MathContext PLAIN = new MathContext(3);

  private QuantityWords() {}

  /** A number and its unit: "12 g", "0.7 g/m²". */
  public static String quantity(double value, String unit) {
    return withUnit(number(value, stepFor(value)), unit);
  }

  /** A spread and its unit: "17 g", "16–19 g". */
  public static SpreadWords quantity(Spread spread, String unit) {
    return rounded(spread, stepFor(Math.max(Math.abs(spread.low()), spread.high())), unit);
  }

  /** A whole number and its unit, for instance a height: "98 mm". */
  public static String whole(double value, String unit) {
    return withUnit(number(value, 1), unit);
  }

  /** A spread in whole numbers: "20 days", "17–24 days". */
  public static SpreadWords whole(Spread spread, String unit) {
    return rounded(spread, 1, unit);
  }

  /** A fraction in whole per cent: "28 %". */
  public static String percent(double fraction) {
    return whole(100 * fraction, "%");
  }

  /** A spread of fractions in whole per cent: "28 %", "26–31 %". */
  public static SpreadWords percent(Spread fraction) {
    return whole(
        new Spread(100 * fraction.low(), 100 * fraction.middle(), 100 * fraction.high()), "%");
  }

  /**
   * A spread of a change, with its sign: "+0.06 mm", "−0.04 to +0.15 mm".
   *
   * @param step what the numbers are rounded to
   */
  public static SpreadWords change(Spread spread, double step, String unit) {
    String low = signed(spread.low(), step);
    String high = signed(spread.high(), step);
    String middle = withUnit(signed(spread.middle(), step), unit);
    return low.equals(high)
        ? SpreadWords.only(middle)
        : new SpreadWords(middle, low + " to " + high, unit);
  }

  /** A mass given in grams, in grams below a kilogram and in kilograms from there on. */
  public static String mass(double grams) {
    return grams < 999.5 ? quantity(grams, "g") : quantity(grams / 1000, "kg");
  }

  /** A bare number with one decimal, for a table whose heading holds the unit; "0" for none. */
  public static String oneDecimal(double value) {
    return value == 0 ? "0" : number(value, 0.1);
  }

  /** A bare number to three significant digits at most, without needless zeros. */
  public static String plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).round(PLAIN);
    return DisplayNumber.plain(rounded.doubleValue());
  }

  /** A bare number to two significant digits, or as it is where it is whole: "1.8", "12", "3". */
  public static String brief(double value) {
    return value % 1 == 0 ? DisplayNumber.plain(value) : quantity(value, "");
  }

  /** A number rounded to a step, and its unit. */
  static String rounded(double value, double step, String unit) {
    return withUnit(number(value, step), unit);
  }

  static SpreadWords rounded(Spread spread, double step, String unit) {
    String low = number(spread.low(), step);
    String high = number(spread.high(), step);
    String middle = withUnit(number(spread.middle(), step), unit);
    return low.equals(high)
        ? SpreadWords.only(middle)
        : new SpreadWords(middle, low + "–" + high, unit);
  }

  private static String withUnit(String number, String unit) {
    return unit.isEmpty() ? number : number + THIN + unit;
  }

  private static String signed(double value, double step) {
    String number = number(value, step);
    boolean zero = number.chars().allMatch(character -> character == '0' || character == '.');
    return zero || number.startsWith("−") ? number : "+" + number;
  }

  /** The step that leaves two significant digits, but never finer than a thousandth; 1 for none. */
  private static double stepFor(double largest) {
    double size = Math.abs(largest);
    if (size == 0) {
      return 1;
    }
    if (size < 0.01) {
      return 0.001;
    }
    return Math.pow(10, Math.floor(Math.log10(size)) - (SIGNIFICANT_DIGITS - 1));
  }

  private static String number(double value, double step) {
    int decimals = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    return DisplayNumber.decimals(Math.round(value / step) * step, decimals);
  }
}
