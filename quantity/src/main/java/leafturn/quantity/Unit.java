package leafturn.quantity;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Units at the edge: what a person or file may use for a quantity that Leafturn keeps in the first
 * unit of its dimension. Factors rest on exact definitions: 1 lb = 0.45359237 kg, 1 ft = 0.3048 m,
 * 1 US gallon = 231 in3.
 */
public enum Unit {
  GRAM_PER_M2(Dimension.MASS_PER_AREA, "g/m²", 1),
  KILOGRAM_PER_HECTARE(Dimension.MASS_PER_AREA, "kg/ha", 1e3 / 1e4),
  KILOGRAM_PER_100_M2(Dimension.MASS_PER_AREA, "kg/100 m²", 1e3 / 1e2),
  POUND_PER_1000_FT2(Dimension.MASS_PER_AREA, "lb/1000 ft²", Exact.POUND_G / Exact.FT2_M2 / 1e3),
  POUND_PER_ACRE(Dimension.MASS_PER_AREA, "lb/ac", Exact.POUND_G / Exact.ACRE_M2),

  GRAM_PER_M2_A_DAY(Dimension.GROWTH, "g/m²/d", 1),
  POUND_PER_1000_FT2_A_DAY(Dimension.GROWTH, "lb/1000 ft²/d", Exact.POUND_G / Exact.FT2_M2 / 1e3),

  GRAM_PER_M2_A_MILLIMETRE(Dimension.LAYER_DENSITY, "g/m²/mm", 1),
  POUND_PER_1000_FT2_AN_INCH(
      Dimension.LAYER_DENSITY,
      "lb/1000 ft²/in",
      Exact.POUND_G / Exact.FT2_M2 / 1e3 / Exact.INCH_MM),

  MILLIMETRE(Dimension.LENGTH, "mm", 1),
  CENTIMETRE(Dimension.LENGTH, "cm", 10),
  METRE(Dimension.LENGTH, "m", 1e3),
  INCH(Dimension.LENGTH, "in", Exact.INCH_MM),
  FOOT(Dimension.LENGTH, "ft", Exact.FOOT_M * 1e3),

  SQUARE_METRE(Dimension.AREA, "m²", 1),
  HECTARE(Dimension.AREA, "ha", 1e4),
  SQUARE_FOOT(Dimension.AREA, "ft²", Exact.FT2_M2),
  THOUSAND_SQUARE_FEET(Dimension.AREA, "1000 ft²", Exact.FT2_M2 * 1e3),
  ACRE(Dimension.AREA, "ac", Exact.ACRE_M2),

  LITRE(Dimension.VOLUME, "L", 1),
  CUBIC_METRE(Dimension.VOLUME, "m³", 1e3),
  US_GALLON(Dimension.VOLUME, "US gal", Exact.IN3_L * 231),
  CUBIC_FOOT(Dimension.VOLUME, "ft³", Exact.IN3_L * 1728),
  CUBIC_YARD(Dimension.VOLUME, "yd³", Exact.IN3_L * 46656),

  GRAM(Dimension.MASS, "g", 1),
  KILOGRAM(Dimension.MASS, "kg", 1e3),
  POUND(Dimension.MASS, "lb", Exact.POUND_G),
  OUNCE(Dimension.MASS, "oz", Exact.POUND_G / 16),

  GRAM_PER_LITRE(Dimension.DENSITY, "g/L", 1),
  KILOGRAM_PER_M3(Dimension.DENSITY, "kg/m³", 1),
  POUND_PER_YARD3(Dimension.DENSITY, "lb/yd³", Exact.POUND_G / (Exact.IN3_L * 46656)),

  CELSIUS(Dimension.TEMPERATURE, "°C", 1),
  FAHRENHEIT(Dimension.TEMPERATURE, "°F", 1 / 1.8, -32),
  KELVIN(Dimension.TEMPERATURE, "K", 1, -273.15),

  /** A difference or a sum of warmth: 9 °F more is 5 °C more, without the offset of 32. */
  CELSIUS_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, "°C difference", 1),
  FAHRENHEIT_DIFFERENCE(Dimension.TEMPERATURE_DIFFERENCE, "°F difference", 1 / 1.8),

  KILOPASCAL(Dimension.PRESSURE, "kPa", 1),
  POUND_PER_INCH2(Dimension.PRESSURE, "psi", Exact.PSI_KPA),

  METRE_PER_SECOND(Dimension.SPEED, "m/s", 1),
  KILOMETRE_PER_HOUR(Dimension.SPEED, "km/h", 1 / 3.6),
  MILE_PER_HOUR(Dimension.SPEED, "mph", Exact.FOOT_M * 5280 / 3600),
  KNOT(Dimension.SPEED, "kn", 1852.0 / 3600),

  MEGAJOULE_PER_M2(Dimension.DAILY_RADIATION, "MJ/m²", 1),
  WATT_PER_M2(Dimension.DAILY_RADIATION, "W/m²", 86400 / 1e6),
  KILOWATT_HOUR_PER_M2(Dimension.DAILY_RADIATION, "kWh/m²", 3.6),
  LANGLEY(Dimension.DAILY_RADIATION, "ly", 0.04184),
  /** Depth of water a day's energy evaporates at 2.45 MJ/kg, rounded as FAO-56 prints it. */
  EVAPORATED_MILLIMETRE(Dimension.DAILY_RADIATION, "mm evaporated", 1 / 0.408),

  FRACTION(Dimension.FRACTION, "g/g", 1),
  PERCENT(Dimension.FRACTION, "%", 1e-2),
  GRAM_PER_KILOGRAM(Dimension.FRACTION, "g/kg", 1e-3),
  PART_PER_MILLION(Dimension.FRACTION, "ppm", 1e-6);

  /** What a unit measures; only units of one dimension convert into each other. */
  public enum Dimension {
    MASS_PER_AREA,
    GROWTH,
    LAYER_DENSITY,
    LENGTH,
    AREA,
    VOLUME,
    MASS,
    DENSITY,
    TEMPERATURE,
    TEMPERATURE_DIFFERENCE,
    PRESSURE,
    SPEED,
    DAILY_RADIATION,
    FRACTION;

    private String spoken() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  /** Exact definitions, apart because an enum's constants come before its own fields. */
  private static final class Exact {
    static final double POUND_G = 453.59237;
    static final double FOOT_M = 0.3048;
    static final double INCH_MM = 25.4;
    static final double FT2_M2 = 0.09290304;
    static final double ACRE_M2 = 4046.8564224;
    static final double IN3_L = 0.016387064;

    /** A pound weighs 453.59237 g times 9.80665 m/s2; on 1 in2, which is 0.00064516 m2. */
    static final double PSI_KPA = POUND_G / 1e3 * 9.80665 / (INCH_MM * INCH_MM / 1e6) / 1e3;
  }

  private final Dimension dimension;
  private final String symbol;
  private final double scale;
  private final double offset;

  Unit(Dimension dimension, String symbol, double scale) {
    this(dimension, symbol, scale, 0);
  }

  Unit(Dimension dimension, String symbol, double scale, double offset) {
    this.dimension = dimension;
    this.symbol = symbol;
    this.scale = scale;
    this.offset = offset;
  }

  /** What this unit measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** The unit as printed beside a number. */
  public String symbol() {
    return symbol;
  }

  /**
   * A value of this unit in another one.
   *
   * @throws IllegalArgumentException when the two measure different things
   */
  public double to(Unit target, double value) {
    if (target.dimension != dimension) {
      throw new IllegalArgumentException(
          "%s cannot be turned into %s: one measures %s, the other %s"
              .formatted(symbol, target.symbol, dimension.spoken(), target.dimension.spoken()));
    }
    return target == this ? value : (value + offset) * scale / target.scale - target.offset;
  }

  /** The unit written as its symbol, whatever the case, with 2 and 3 allowed for ² and ³. */
  public static Optional<Unit> named(String text) {
    String wanted = typed(text);
    return Arrays.stream(values()).filter(unit -> typed(unit.symbol).equals(wanted)).findFirst();
  }

  /** The units of a dimension, for messages: "mm, cm, m, in, ft". */
  public static String names(Dimension dimension) {
    return Arrays.stream(values())
        .filter(unit -> unit.dimension == dimension)
        .map(Unit::symbol)
        .collect(Collectors.joining(", "));
  }

  private static String typed(String text) {
    return text.strip().toLowerCase(Locale.ROOT).replace('²', '2').replace('³', '3');
  }
}
