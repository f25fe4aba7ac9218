package leafturn.records;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * Faults in the units of whoever typed what is wrong. Readers of documents tell numbers and limits
 * as they are kept.
 */
public final class FaultUnits {
  private static final String NUMBER = "(-?[\\d.]+(?:E-?\\d+)?)";
  private static final Pattern WRONG = Pattern.compile("^" + NUMBER + "(?= is out of range)");
  private static final Pattern LIMITS =
      Pattern.compile("\\bfrom " + NUMBER + " to " + NUMBER + ", [^ ;.]+");

  /** Digits that a conversion leaves right. */
  private static final MathContext EXACT = new MathContext(12);

  private static final BigDecimal SMALL = new BigDecimal("0.1");

  private FaultUnits() {}

  /**
   * A fault of a number in other units.
   *
   * @param measure what the number measures; null where its unit is the same for everyone
   */
  public static String told(String sentence, @Nullable Measure measure, Units units) {
    if (measure == null || measure.unit(units) == measure.keptUnit()) {
      return sentence;
    }
    String wrong = WRONG.matcher(sentence).replaceAll(found -> typed(found, 1, measure, units));
    String limits =
        LIMITS
            .matcher(wrong)
            .replaceAll(
                found ->
                    "from %s to %s, %s"
                        .formatted(
                            limit(found, 1, measure, units),
                            limit(found, 2, measure, units),
                            measure.unit(units).symbol()));
    String unit = Pattern.quote(measure.keptUnit().symbol()) + "(?![\\w²/])";
    String numbers =
        Pattern.compile(NUMBER + " " + unit)
            .matcher(limits)
            .replaceAll(found -> measure.told(Double.parseDouble(found.group(1)), units));
    return Pattern.compile("(?<=[ ,])" + unit)
        .matcher(numbers)
        .replaceAll(Matcher.quoteReplacement(measure.unit(units).symbol()));
  }

  private static String typed(MatchResult found, int group, Measure measure, Units units) {
    return measure.typed(Double.parseDouble(found.group(group)), units);
  }

  /** A limit in a few digits, which still lies within it. */
  private static String limit(MatchResult found, int group, Measure measure, Units units) {
    BigDecimal limit =
        BigDecimal.valueOf(measure.shown(Double.parseDouble(found.group(group)), units))
            .round(EXACT);
    RoundingMode inwards = group == 1 ? RoundingMode.CEILING : RoundingMode.FLOOR;
    BigDecimal few =
        limit.abs().compareTo(SMALL) < 0
            ? limit.round(new MathContext(2, inwards))
            : limit.setScale(2, inwards);
    return Numbers.plain(few.doubleValue());
  }
}
