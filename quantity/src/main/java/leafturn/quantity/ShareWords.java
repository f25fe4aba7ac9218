package leafturn.quantity;

/** Shares of a whole as people say them: "a third", "a quarter", else in per cent: "30 %". */
public final class ShareWords {
  private static final double SAME = 0.0005;

  private ShareWords() {}

  /**
   * @param fraction 0 to 1; a typed 0.333 is a third too
   */
  public static String of(double fraction) {
    if (is(fraction, 1.0 / 2)) {
      return "half";
    }
    if (is(fraction, 2.0 / 5)) {
      return "two fifths";
    }
    if (is(fraction, 1.0 / 3)) {
      return "a third";
    }
    if (is(fraction, 1.0 / 4)) {
      return "a quarter";
    }
    return is(fraction, 1.0 / 5) ? "a fifth" : percent(fraction);
  }

  /** The same as a sentence begins: "A third". */
  public static String beginning(double fraction) {
    String words = of(fraction);
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static String percent(double fraction) {
    return DisplayNumber.plain(Math.round(1000 * fraction) / 10.0) + " %";
  }

  private static boolean is(double fraction, double share) {
    return Math.abs(fraction - share) < SAME;
  }
}
