package leafturn.reports;

import java.util.regex.Pattern;

/** Keeps a number and its unit, a short date and a range on one line. */
public final class Unbroken {
  private static final char NO_BREAK = '\u00a0';
  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(?<=\\d) (?=%|°|(?:mm|cm|m|m²|km|g|kg|t|L|h|ft|ft²|lb|gal)(?![\\p{L}²]))");

  /** As in the days of a table, "Mon 30 November". */
  private static final Pattern BEFORE_MONTH =
      Pattern.compile(
          "(?<=\\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \\d{1,2}) (?=(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec))");

  private static final String JOINED = "\u2060";

  /** After the dash of a range, which may be a hyphen between years. */
  private static final Pattern WITHIN_RANGE =
      Pattern.compile("(?<=\\d–)(?=\\d)|(?<=\\b(?:19|20)\\d\\d-)(?=(?:19|20)\\d\\d\\b)");

  private Unbroken() {}

  /**
   * A text with no-break spaces between its numbers and their units and in its short dates, and no
   * break after the dash of a range.
   */
  public static String of(String text) {
    String noBreak = String.valueOf(NO_BREAK);
    String units = BEFORE_UNIT.matcher(text).replaceAll(noBreak);
    String days = BEFORE_MONTH.matcher(units).replaceAll(noBreak);
    return WITHIN_RANGE.matcher(days).replaceAll(JOINED);
  }
}
