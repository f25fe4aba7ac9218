package leafturn.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** What a number in a form or on a page measures, with the unit each reader expects. */
public enum Measure {
  /** Heights and lengths of grass, thatch and decks, kept in mm. */
  HEIGHT(Unit.MILLIMETRE, Unit.INCH),
  /** Water, kept in mm. */
  WATER(Unit.MILLIMETRE, Unit.INCH),
  /** Depths in the soil, kept in cm. */
  DEPTH(Unit.CENTIMETRE, Unit.INCH),
  /** Distances and elevations, kept in m. */
  DISTANCE(Unit.METRE, Unit.FOOT),
  /** Areas of lawns and beds, kept in m2. */
  AREA(Unit.SQUARE_METRE, Unit.SQUARE_FOOT),
  /** Nutrients, lime and seed on an area, kept in g/m2. */
  MASS_PER_AREA(Unit.GRAM_PER_M2, Unit.POUND_PER_1000_FT2),
  /** Dry matter of each step of height or thatch on an area, kept in g/m2 and mm. */
  LAYER_DENSITY(Unit.GRAM_PER_M2_A_MILLIMETRE, Unit.POUND_PER_1000_FT2_AN_INCH),
  /** Growth on an area, kept in g/m2 a day. */
  GROWTH(Unit.GRAM_PER_M2_A_DAY, Unit.POUND_PER_1000_FT2_A_DAY),
  /** What a litre of loose clippings weighs, kept in g. */
  LOOSE_DENSITY(Unit.GRAM_PER_LITRE, Unit.POUND_PER_YARD3),
  /** Nitrogen that a bed may take in a year, kept in kg/ha. */
  NUTRIENT_LIMIT(Unit.KILOGRAM_PER_HECTARE, Unit.POUND_PER_1000_FT2),
  /** Bags and heaps, kept in litres. */
  VOLUME(Unit.LITRE, Unit.US_GALLON),
  /** Weights, kept in kg. */
  WEIGHT(Unit.KILOGRAM, Unit.POUND),
  /** Resistance of the ground, kept in kPa. */
  PRESSURE(Unit.KILOPASCAL, Unit.POUND_PER_INCH2),
  /** Air temperatures, kept in °C. */
  TEMPERATURE(Unit.CELSIUS, Unit.FAHRENHEIT),
  /** Differences and spreads of temperatures, kept in °C. */
  TEMPERATURE_DIFFERENCE(Unit.CELSIUS_DIFFERENCE, Unit.FAHRENHEIT_DIFFERENCE),
  /** Speeds of a mower, kept in km/h. */
  GROUND_SPEED(Unit.KILOMETRE_PER_HOUR, Unit.MILE_PER_HOUR),
  /** Wind, kept in m/s. */
  WIND_SPEED(Unit.METRE_PER_SECOND, Unit.MILE_PER_HOUR),
  /** Shares of a whole, kept as fractions and told in per cent. */
  SHARE(Unit.FRACTION, Unit.PERCENT, Unit.PERCENT);

  private static final MathContext READABLE = new MathContext(4);
  private static final MathContext FEW = new MathContext(2);
  private static final BigDecimal TENTH = new BigDecimal("0.1");

  /** Finer than anything a person measures, and free of the noise of binary fractions. */
  private static final MathContext EXACT_ENOUGH = new MathContext(12);

  private final Unit kept;
  private final Unit metric;
  private final Unit us;

  Measure(Unit metric, Unit us) {
    this(metric, metric, us);
  }

  Measure(Unit kept, Unit metric, Unit us) {
    this.kept = kept;
    this.metric = metric;
    this.us = us;
  }

  /** The unit for a reader. */
  public Unit unit(Units units) {
    return units == Units.US ? us : metric;
  }

  /** The unit it is kept in. */
  public Unit keptUnit() {
    return kept;
  }

  /** A kept value in a reader's unit. */
  public double shown(double kept, Units units) {
    return this.kept.to(unit(units), kept);
  }

  /** A value in a reader's unit as it is kept. */
  public double kept(double shown, Units units) {
    return unit(units).to(kept, shown);
  }

  /**
   * A typed value as it is kept: as it is where the unit is the kept one, else to twelve
   * significant digits.
   */
  public BigDecimal kept(BigDecimal typed, Units units) {
    if (unit(units) == kept) {
      return typed;
    }
    BigDecimal value = BigDecimal.valueOf(kept(typed.doubleValue(), units));
    return value.round(EXACT_ENOUGH).stripTrailingZeros();
  }

  /** A kept value as a reader would type it, with its unit: "76 mm", "2.992 in". */
  public String told(double kept, Units units) {
    return typed(kept, units) + " " + unit(units).symbol();
  }

  /**
   * A kept value to look at, with its unit: as it is where the unit is the kept one, else to two
   * decimals, or two significant digits where it is below a tenth: "76 mm", "2.99 in".
   */
  public String read(double kept, Units units) {
    if (unit(units) == this.kept) {
      return told(kept, units);
    }
    BigDecimal number = BigDecimal.valueOf(shown(kept, units));
    BigDecimal few =
        number.abs().compareTo(TENTH) < 0
            ? number.round(FEW)
            : number.setScale(2, RoundingMode.HALF_UP);
    String text = few.signum() == 0 ? "0" : few.stripTrailingZeros().toPlainString();
    return text + " " + unit(units).symbol();
  }

  /**
   * A usual value that a form begins with: as it is where the unit is the kept one, else to the
   * nearest half of the reader's unit, for nobody sets a tape to more.
   *
   * @param kept at least half of the reader's unit
   */
  public String begun(double kept, Units units) {
    if (unit(units) == metric) {
      return typed(kept, units);
    }
    BigDecimal halves = BigDecimal.valueOf(Math.round(2 * shown(kept, units)));
    return halves.divide(BigDecimal.valueOf(2)).stripTrailingZeros().toPlainString();
  }

  /**
   * A kept value as a reader would type it: as it is where the unit is the kept one, else to four
   * significant digits; a point as decimal mark, no grouping.
   */
  public String typed(double kept, Units units) {
    BigDecimal number = BigDecimal.valueOf(shown(kept, units));
    BigDecimal readable = unit(units) == this.kept ? number : number.round(READABLE);
    return readable.signum() == 0 ? "0" : readable.stripTrailingZeros().toPlainString();
  }
}
