package leafturn.trials.design;

import java.math.BigDecimal;
import leafturn.quantity.Range;
import org.jspecify.annotations.Nullable;

/**
 * What is observed to answer the question.
 *
 * @param name 1 to 60 characters, as it stands in data and results
 * @param kind how it comes about
 * @param unit of its values, for instance {@code mg/kg}; {@code 1-9} for a rating
 * @param low smallest value that can be, or null
 * @param high largest value that can be, or null
 * @param scale on which it is analysed
 * @param summary what a season's dates become
 * @param margin the smallest difference that matters, in the unit, or as a ratio above 1 on the log
 *     scale; null where none was fixed
 * @param primary whether it alone decides the verdict
 */
public record Outcome(
    String name,
    Kind kind,
    String unit,
    @Nullable Double low,
    @Nullable Double high,
    Scale scale,
    Summary summary,
    @Nullable Double margin,
    boolean primary) {
  /** Longest name, characters. */
  public static final int LONGEST_NAME = 60;

  /** A margin, in the unit of its outcome. */
  public static final Range MARGIN = new Range("margin", 1e-9, 1e9, "");

  /** How a value comes about. */
  public enum Kind {
    /** Ordered classes given by eye. */
    RATING("rating"),
    MEASUREMENT("measurement"),
    SOIL("soil"),
    TISSUE("tissue");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in a plan. */
    public String word() {
      return word;
    }
  }

  /** The scale of the analysis. */
  public enum Scale {
    IDENTITY("identity"),
    LOG("log");

    private final String word;

    Scale(String word) {
      this.word = word;
    }

    /** The word in a plan. */
    public String word() {
      return word;
    }
  }

  /** What a plot's values of the season become. */
  public enum Summary {
    /** Mean over time, by trapezoids between dates. */
    SEASON_MEAN("season-mean"),
    /** Change a day along a straight line. */
    SLOPE("slope"),
    /** The value of the last date. */
    LAST_DATE("last-date");

    private final String word;

    Summary(String word) {
      this.word = word;
    }

    /** The word in a plan. */
    public String word() {
      return word;
    }
  }

  /**
   * @throws IllegalArgumentException when the name is blank or too long, a rating has no lowest and
   *     highest value, the lowest is not below the highest, or scale, kind and margin do not fit
   */
  public Outcome {
    if (name.isBlank() || name.length() > LONGEST_NAME) {
      throw new IllegalArgumentException(
          "the name of an outcome has 1 to %d characters, not \"%s\""
              .formatted(LONGEST_NAME, name));
    }
    if (low != null && high != null && !(low < high)) {
      throw fault(name, "its lowest value must lie below its highest");
    }
    if (kind == Kind.RATING && (low == null || high == null)) {
      throw fault(name, "a rating needs low and high, as 1 and 9");
    }
    if (scale == Scale.LOG) {
      checkLog(name, kind, low, margin);
    }
    if (margin != null) {
      MARGIN.checked(margin);
      if (isTooWide(low, high, scale, margin)) {
        throw fault(
            name,
            "the margin %s is half or more of its range from %s to %s, so that nearly everything would count as equivalent; give the smallest difference that matters"
                .formatted(plain(margin), plain(low), plain(high)));
      }
    }
  }

  /**
   * Whether a margin is at least half of what lies between the lowest and the highest value
   * (assumed). On the log scale that is the root of their ratio.
   */
  public static boolean isTooWide(
      @Nullable Double low, @Nullable Double high, Scale scale, @Nullable Double margin) {
    if (low == null || high == null || margin == null) {
      return false;
    }
    return scale == Scale.LOG
        ? low > 0 && margin >= Math.sqrt(high / low)
        : margin >= (high - low) / 2;
  }

  private static String plain(@Nullable Double value) {
    return value == null
        ? ""
        : new BigDecimal(value.toString()).stripTrailingZeros().toPlainString();
  }

  /** The same without a verdict. */
  public Outcome exploratory() {
    return new Outcome(name, kind, unit, low, high, scale, summary, margin, false);
  }

  private static void checkLog(
      String name, Kind kind, @Nullable Double low, @Nullable Double margin) {
    if (kind == Kind.RATING) {
      throw fault(name, "a rating has no logarithm; take the scale identity");
    }
    if (low != null && low < 0) {
      throw fault(name, "values below 0 have no logarithm; take the scale identity, or low 0");
    }
    if (margin != null && margin <= 1) {
      throw fault(name, "on the log scale the margin is a ratio above 1, as 1.2");
    }
  }

  private static IllegalArgumentException fault(String name, String sentence) {
    return new IllegalArgumentException("outcome \"%s\": %s".formatted(name, sentence));
  }
}
