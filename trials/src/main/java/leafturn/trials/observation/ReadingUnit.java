package leafturn.trials.observation;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import leafturn.quantity.LabelNutrient;
import leafturn.quantity.SoilLayer;
import leafturn.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The unit of a column of readings, with the form in which P and K are stated: {@code mg/kg},
 * {@code ppm K2O}, {@code lb/acre P}.
 *
 * @param text as it was given
 * @param unit what it measures; null for a unit we do not convert, as {@code 1-9} or {@code g}
 * @param nutrient of which the form is told, or null
 * @param oxide whether it is stated as the oxide
 */
public record ReadingUnit(
    String text, @Nullable Unit unit, @Nullable LabelNutrient nutrient, boolean oxide) {

  /** A unit as laboratories and plans write it. */
  public static ReadingUnit of(String text) {
    String plain =
        text.strip()
            .replace('₂', '2')
            .replace('₅', '5')
            .replaceAll("[()]", " ")
            .replaceAll("\\s+", " ")
            .strip();
    LabelNutrient nutrient = null;
    boolean oxide = false;
    for (LabelNutrient each : LabelNutrient.values()) {
      String oxideSymbol = each.oxideSymbol().replace('₂', '2').replace('₅', '5');
      String withoutOxide = without(plain, oxideSymbol);
      String withoutElement = without(plain, each.elementSymbol());
      if (!withoutOxide.equals(plain)) {
        nutrient = each;
        oxide = true;
        plain = withoutOxide;
      } else if (!withoutElement.equals(plain)) {
        nutrient = each;
        plain = withoutElement;
      }
    }
    return new ReadingUnit(text.strip(), base(plain), nutrient, oxide);
  }

  /** "mg P/kg" and "mg/kg P" say the same. */
  private static String without(String text, String symbol) {
    return text.replaceAll("(?<![A-Za-z0-9])" + symbol + "(?![A-Za-z0-9])", "")
        .replaceAll("\\s*/\\s*", "/")
        .replaceAll("\\s+", " ")
        .strip();
  }

  private static @Nullable Unit base(String plain) {
    String lower = plain.toLowerCase(Locale.ROOT);
    return switch (lower) {
      case "mg/kg", "mg kg-1", "ug/g", "µg/g" -> Unit.PART_PER_MILLION;
      case "lb/acre", "lbs/acre", "lb/a" -> Unit.POUND_PER_ACRE;
      case "lbs/1000 ft2", "lb/1000 sq ft", "lb/1000ft2" -> Unit.POUND_PER_1000_FT2;
      default -> Optional.of(lower).flatMap(Unit::named).orElse(null);
    };
  }

  /**
   * A value of this unit in another one: ppm is mg/kg, P2O5 and K2O become P and K by molar masses,
   * and an amount on an area becomes a share of the soil by the layer it was taken from.
   *
   * @param layer the soil the cores were taken from, or null where nobody told
   * @throws IllegalArgumentException when the two cannot be compared, saying why
   */
  public double to(ReadingUnit target, double value, @Nullable SoilLayer layer) {
    if (text.equals(target.text)) {
      return value;
    }
    double element = inForm(target, value);
    if (unit == null && target.unit == null && text.equalsIgnoreCase(target.text)) {
      return element;
    }
    if (unit == null || target.unit == null) {
      throw unlike(target);
    }
    if (unit.dimension() != target.unit.dimension()) {
      return throughLayer(unit, target, element, layer);
    }
    return unit.to(target.unit, element);
  }

  private IllegalArgumentException unlike(ReadingUnit target) {
    return new IllegalArgumentException(
        "%s cannot be turned into %s; give the values in %2$s".formatted(text, target.text));
  }

  private double inForm(ReadingUnit target, double value) {
    if (nutrient != null && target.nutrient != null && nutrient != target.nutrient) {
      throw new IllegalArgumentException(
          "%s tells of %s, but %s of %s"
              .formatted(
                  text, nutrient.elementSymbol(), target.text, target.nutrient.elementSymbol()));
    }
    if (oxide == target.oxide) {
      return value;
    }
    LabelNutrient of = oxide ? nutrient : target.nutrient;
    if (of == null) {
      return value;
    }
    return oxide ? of.elementFromOxide(value) : of.oxideFromElement(value);
  }

  private double throughLayer(
      Unit given, ReadingUnit target, double value, @Nullable SoilLayer layer) {
    Unit wanted = Objects.requireNonNull(target.unit);
    if (given.dimension() != Unit.Dimension.MASS_PER_AREA
        || wanted.dimension() != Unit.Dimension.FRACTION) {
      throw unlike(target);
    }
    if (layer == null) {
      throw new IllegalArgumentException(
          "the value is in %s, the plan's in %s: the one is an amount on an area, the other a share of the soil, which only the depth of the cores and the bulk density join; give it in %2$s"
              .formatted(text, target.text));
    }
    return Unit.PART_PER_MILLION.to(wanted, layer.ppm(given.to(Unit.GRAM_PER_M2, value)));
  }
}
