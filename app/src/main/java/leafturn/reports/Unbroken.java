package leafturn.reports;

import java.util.regex.Pattern;

/** Keeps a number and its unit on one line. */
public final class Unbroken {
  private static final char NO_BREAK = '\u00a0';
  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(?<=\\d) (?=%|°|(?:mm|cm|m|m²|km|g|kg|t|L|h|ft|ft²|lb|gal)(?![\\p{L}²]))");

  private Unbroken() {}

  /** A text with no-break spaces between its numbers and their units. */
  public static String of(String text) {
    return BEFORE_UNIT.matcher(text).replaceAll(String.valueOf(NO_BREAK));
  }
}
