package leafturn.trials.observation;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.trials.analysis.data.Response;
import org.jspecify.annotations.Nullable;

/**
 * A reading as a number, with what is known of it below the detection limit.
 *
 * @param value the value, or the limit where it lies below
 * @param belowDetection whether it is only known to lie below {@code value}
 */
public record ReadingValue(double value, boolean belowDetection) {
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d{1,15}([.,]\\d{0,12})?|[.,]\\d{1,12})([eE][-+]?\\d{1,3})?");
  private static final Pattern BELOW = Pattern.compile("<\\s*(.+)");
  private static final Pattern WORDS =
      Pattern.compile("(?i)n\\.?d\\.?|bdl|below detection|not detected|trace");

  /**
   * Reads a value as it was given. "nd" and the like, and a 0 that a detection limit forbids, lie
   * below that limit: they are never taken for 0, the limit or half of it in silence.
   *
   * @param detectionLimit of the method in the unit of the value, or null
   * @throws IllegalArgumentException naming the text when it is no value
   */
  public static ReadingValue of(String text, @Nullable Double detectionLimit) {
    String given = text.strip();
    Matcher below = BELOW.matcher(given);
    if (below.matches()) {
      return new ReadingValue(number(below.group(1), given), true);
    }
    if (WORDS.matcher(given).matches()) {
      if (detectionLimit == null) {
        throw new IllegalArgumentException(
            "'%s' needs the detection limit; write it as <2 or give the limit".formatted(given));
      }
      return new ReadingValue(detectionLimit, true);
    }
    double value = number(given, given);
    return detectionLimit != null && value < detectionLimit
        ? new ReadingValue(detectionLimit, true)
        : new ReadingValue(value, false);
  }

  /**
   * That a number stands below its detection limit without being written so, in a clause; null
   * where it does not.
   */
  public static @Nullable String unwrittenLimit(Reading reading) {
    String given = reading.value().strip();
    Double limit = reading.detectionLimit();
    boolean written = BELOW.matcher(given).matches() || WORDS.matcher(given).matches();
    if (limit == null || written || !of(given, limit).belowDetection) {
      return null;
    }
    return "%s stands below the detection limit of %2$s and is counted as <%2$s"
        .formatted(given, OutlyingValues.number(limit));
  }

  /**
   * A value as it was given, with a decimal point where it has a decimal comma. Other texts stay as
   * they are.
   */
  public static String withPoint(String text) {
    Matcher below = BELOW.matcher(text.strip());
    String number = below.matches() ? below.group(1) : text;
    return NUMBER.matcher(number.strip()).matches() ? text.replace(',', '.') : text;
  }

  private static double number(String text, String given) {
    if (!NUMBER.matcher(text.strip()).matches()) {
      throw new IllegalArgumentException(
          "'%s' is no number; write it with a decimal point and without its unit, or leave it out"
              .formatted(given));
    }
    double value = Double.parseDouble(text.strip().replace(',', '.'));
    if (!Response.canBeComputed(value)) {
      throw new IllegalArgumentException(
          "%s is beyond what can be measured; check it, or take another unit".formatted(given));
    }
    return value;
  }
}
