package leafturn.records;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Dates as files carry them. */
public final class Dates {
  /** Daily weather was first measured after this, and nobody plans lawns beyond the last. */
  public static final int FIRST_YEAR = 1700;

  public static final int LAST_YEAR = 2200;

  private static final DateTimeFormatter WORDS =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{2})-(\\d{2})");

  /** A date in a sentence, and not in the name of a file. */
  private static final Pattern IN_SENTENCE =
      Pattern.compile("(?<![\\w.-])" + ISO + "(?![\\w-]|\\.\\w)");

  private Dates() {}

  /**
   * The date of an ISO 8601 text such as 2015-05-28, or null when it is none in the years above.
   */
  public static @Nullable LocalDate parse(String text) {
    Matcher parts = ISO.matcher(text);
    return parts.matches()
        ? of(
            Integer.parseInt(parts.group(1)),
            Integer.parseInt(parts.group(2)),
            Integer.parseInt(parts.group(3)))
        : null;
  }

  /** The date, or null when there is no such day or it lies outside the years above. */
  static @Nullable LocalDate of(int year, int month, int day) {
    if (year < FIRST_YEAR || year > LAST_YEAR) {
      return null;
    }
    try {
      return LocalDate.of(year, month, day);
    } catch (DateTimeException e) {
      return null;
    }
  }

  /** A date as a person reads it: "28 May 2015". */
  public static String words(LocalDate day) {
    return WORDS.format(day);
  }

  /** A sentence with its dates as a person reads them, "28 May 2015" for 2015-05-28. */
  public static String inWords(String sentence) {
    return IN_SENTENCE
        .matcher(sentence)
        .replaceAll(
            found -> {
              LocalDate day = parse(found.group());
              return day == null ? found.group() : words(day);
            });
  }

  /** What is wrong with the day of something that was done, where it has not come yet. */
  public static String notYet(LocalDate day, LocalDate today) {
    return "%s has not come yet: today is %s. Give the day it was done."
        .formatted(words(day), words(today));
  }

  /** What is wrong with a text that is no date. */
  public static String fault(String text) {
    if (text.isEmpty()) {
      return "the date is missing; give one such as 2015-05-28.";
    }
    Matcher parts = ISO.matcher(text);
    String right =
        parts.matches()
            ? "give a day that exists, in the years %d to %d.".formatted(FIRST_YEAR, LAST_YEAR)
            : "write year, month and day as in 2015-05-28.";
    return Faults.quoted(text) + " is not a date; " + right;
  }
}
