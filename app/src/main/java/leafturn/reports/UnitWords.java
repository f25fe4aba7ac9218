package leafturn.reports;

import leafturn.advice.call.Spread;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Unit;
import leafturn.quantity.Units;

/**
 * Quantities that are kept in SI, in the units of a reader.
 *
 * @param units the reader's units
 */
public record UnitWords(Units units) {
  private static final double TENTH = 0.1;
  private static final double HUNDREDTH = 0.01;
  private static final double THOUSANDTH = 0.001;
  private static final double OUNCES_PER_POUND = 16;
  private static final double HUNDRED = 100;

  /** The unit of heights, for a heading: "mm" or "in". */
  public String heightUnit() {
    return Measure.HEIGHT.unit(units).symbol();
  }

  /** The unit of heights within a sentence: "mm" or "inches", since "in in" is hard to read. */
  public String heightUnitInWords() {
    return us() ? "inches" : heightUnit();
  }

  /** The unit of rates, for a heading: "g/m²" or "lb/1000 ft²". */
  public String onAreaUnit() {
    return Measure.MASS_PER_AREA.unit(units).symbol();
  }

  /** A height: "98 mm", "3.9 in". */
  public String height(double mm) {
    return heightNumber(mm) + QuantityWords.THIN + heightUnit();
  }

  /** A height without its unit: "98", "3.9". */
  public String heightNumber(double mm) {
    return us()
        ? DisplayNumber.decimals(Measure.HEIGHT.shown(mm, units), 1)
        : DisplayNumber.decimals(mm, 0);
  }

  /** Rain or water: "12 mm", "0.47 in". */
  public String water(double mm) {
    return us()
        ? QuantityWords.rounded(Measure.WATER.shown(mm, units), HUNDREDTH, heightUnit())
        : QuantityWords.whole(mm, heightUnit());
  }

  /** Rain or water without its unit, finer: "0" for none, "0.4", "0.02". */
  public String waterNumber(double mm) {
    if (mm == 0) {
      return "0";
    }
    return us()
        ? DisplayNumber.decimals(Measure.WATER.shown(mm, units), 2)
        : QuantityWords.oneDecimal(mm);
  }

  /** A spread of rain or water. */
  public SpreadWords water(Spread mm) {
    return us()
        ? QuantityWords.rounded(shown(mm, Measure.WATER), HUNDREDTH, heightUnit())
        : QuantityWords.whole(mm, heightUnit());
  }

  /** A small change of a depth such as thatch, with its sign. */
  public SpreadWords depthChange(Spread mm) {
    return QuantityWords.change(
        shown(mm, Measure.HEIGHT), us() ? THOUSANDTH : HUNDREDTH, heightUnit());
  }

  /** A depth such as thatch: "11 mm", "0.4 in". */
  public String depth(double mm) {
    return us()
        ? QuantityWords.rounded(Measure.HEIGHT.shown(mm, units), TENTH, heightUnit())
        : QuantityWords.whole(mm, heightUnit());
  }

  /** A spread of a depth such as thatch: "3.7 mm", "0.15 in". */
  public SpreadWords depth(Spread mm) {
    return QuantityWords.quantity(shown(mm, Measure.HEIGHT), heightUnit());
  }

  /** An area: "640 m²", "6890 ft²". */
  public String area(double m2) {
    return QuantityWords.whole(Measure.AREA.shown(m2, units), Measure.AREA.unit(units).symbol());
  }

  /** A spread of a mass on an area. */
  public SpreadWords onArea(Spread gPerM2) {
    return QuantityWords.quantity(shown(gPerM2, Measure.MASS_PER_AREA), onAreaUnit());
  }

  /** A mass on an area without its unit: "1.8", "0.37". */
  public String onAreaNumber(double gPerM2) {
    if (gPerM2 == 0) {
      return "0";
    }
    return us()
        ? DisplayNumber.decimals(Measure.MASS_PER_AREA.shown(gPerM2, units), 2)
        : QuantityWords.oneDecimal(gPerM2);
  }

  /** A mass given in grams: grams or kilograms, ounces or pounds. */
  public String mass(double grams) {
    if (!us()) {
      return QuantityWords.mass(grams);
    }
    double pounds = Unit.GRAM.to(Unit.POUND, grams);
    return pounds < 1
        ? QuantityWords.quantity(pounds * OUNCES_PER_POUND, "oz")
        : QuantityWords.quantity(pounds, "lb");
  }

  /** A spread of litres: "120 litres", "32 gal". */
  public SpreadWords volume(Spread litres) {
    return us()
        ? QuantityWords.quantity(shown(litres, Measure.VOLUME), "gal")
        : QuantityWords.quantity(litres, "litres");
  }

  /** Litres on an area: "11 litres/m²", "27 gal/100 ft²". */
  public SpreadWords volumeOnArea(Spread litresPerM2) {
    return QuantityWords.quantity(
        new Spread(
            litresOnArea(litresPerM2.low()),
            litresOnArea(litresPerM2.middle()),
            litresOnArea(litresPerM2.high())),
        volumeOnAreaUnit());
  }

  /** The unit of volumes on an area. */
  public String volumeOnAreaUnit() {
    return us() ? "gal/100 ft²" : "litres/m²";
  }

  /** Litres/m2 in the reader's unit. */
  public double litresOnArea(double litresPerM2) {
    return us()
        ? HUNDRED * Measure.VOLUME.shown(litresPerM2, units) / Measure.AREA.shown(1, units)
        : litresPerM2;
  }

  private boolean us() {
    return units == Units.US;
  }

  private Spread shown(Spread kept, Measure measure) {
    return new Spread(
        measure.shown(kept.low(), units),
        measure.shown(kept.middle(), units),
        measure.shown(kept.high(), units));
  }
}
