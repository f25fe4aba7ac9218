package leafturn.trials.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import leafturn.quantity.LabelNutrient;
import leafturn.trials.design.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * Limits within which values of a kind usually lie; what lies outside is often another unit.
 *
 * @param words what it is the range of
 * @param low least usual value, in {@code unit}
 * @param high greatest usual value, in {@code unit}
 * @param unit of both
 * @source common practice, no source
 */
public record UsualRange(String words, double low, double high, String unit) {
  private static final UsualRange SOIL_P = new UsualRange("soil P", 1, 500, "mg/kg P");
  private static final UsualRange SOIL_K = new UsualRange("soil K", 10, 1000, "mg/kg K");
  private static final UsualRange TISSUE_K = new UsualRange("tissue K", 0.5, 5, "% K");
  private static final Pattern PHOSPHORUS = Pattern.compile("(?i).*phosph.*|(.*\\W)?P(\\W.*)?");
  private static final Pattern POTASSIUM = Pattern.compile("(?i).*potass.*|(.*\\W)?K(\\W.*)?");

  /** The range of an outcome; null where none is usual. */
  public static @Nullable UsualRange of(Outcome outcome) {
    LabelNutrient nutrient = nutrient(outcome);
    if (nutrient == null) {
      return null;
    }
    boolean soil = outcome.kind() == Outcome.Kind.SOIL;
    return switch (nutrient) {
      case POTASSIUM -> soil ? SOIL_K : TISSUE_K;
      case PHOSPHORUS -> soil ? SOIL_P : null;
    };
  }

  /** The nutrient that an outcome of soil or tissue measures; null where it is none of these. */
  static @Nullable LabelNutrient nutrient(Outcome outcome) {
    String told = outcome.name().replace('_', ' ') + " " + outcome.unit();
    boolean potassium = POTASSIUM.matcher(told).matches();
    boolean phosphorus = !potassium && PHOSPHORUS.matcher(told).matches();
    return switch (outcome.kind()) {
      case SOIL, TISSUE ->
          potassium ? LabelNutrient.POTASSIUM : phosphorus ? LabelNutrient.PHOSPHORUS : null;
      default -> null;
    };
  }

  /**
   * Whether the plan allows a value.
   *
   * @param value in the unit of the outcome
   */
  public static boolean isAllowed(Outcome outcome, double value) {
    Double low = outcome.low();
    Double high = outcome.high();
    return (low == null || value >= low) && (high == null || value <= high);
  }

  /**
   * What is outside the range, or below or above what the plan allows.
   *
   * @param value in the unit of the outcome
   */
  public static List<String> faults(Outcome outcome, double value) {
    List<String> faults = new ArrayList<>();
    if (!isAllowed(outcome, value)) {
      faults.add(
          "%s lies outside what the plan allows, %s".formatted(number(value), allowed(outcome)));
    }
    UsualRange usual = of(outcome);
    ReadingUnit unit = ReadingUnit.of(outcome.unit());
    if (usual != null && faults.isEmpty() && unit.unit() != null) {
      double compared = unit.to(ReadingUnit.of(usual.unit), value, null);
      if (compared < usual.low || compared > usual.high) {
        faults.add(
            "%s %s is far from usual for %s (%s to %s %s); is it in another unit?"
                .formatted(
                    number(value),
                    outcome.unit(),
                    usual.words,
                    number(usual.low),
                    number(usual.high),
                    usual.unit));
      }
    }
    return faults;
  }

  /** "1 to 9" of a scale, "0 % or more" of an amount. */
  private static String allowed(Outcome outcome) {
    Double low = outcome.low();
    Double high = outcome.high();
    String unit = outcome.kind() == Outcome.Kind.RATING ? "" : " " + outcome.unit();
    if (low != null && high != null) {
      return "%s to %s%s".formatted(number(low), number(high), unit);
    }
    return low != null
        ? "%s%s or more".formatted(number(low), unit)
        : "%s%s or less".formatted(number(high == null ? Double.NaN : high), unit);
  }

  private static String number(double value) {
    return OutlyingValues.number(value);
  }
}
