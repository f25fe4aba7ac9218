package leafturn.reports;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leafturn.quantity.DisplayNumber;
import leafturn.quantity.Measure;
import leafturn.quantity.Unit;
import leafturn.quantity.Units;
import org.jspecify.annotations.Nullable;

/**
 * The unit of a number in the tables of rules and parameters, where it is written as it is kept:
 * "mm", "g DM/m2/d", or "-" for a pure number.
 *
 * @param written the unit as the table writes it
 */
public record TableUnit(String written) {
  private static final Map<String, Measure> MEASURES =
      Map.ofEntries(
          Map.entry("mm", Measure.HEIGHT),
          Map.entry("cm", Measure.DEPTH),
          Map.entry("m", Measure.DISTANCE),
          Map.entry("°C", Measure.TEMPERATURE),
          Map.entry("degC", Measure.TEMPERATURE),
          Map.entry("degC difference", Measure.TEMPERATURE_DIFFERENCE),
          Map.entry("g/m2", Measure.MASS_PER_AREA),
          Map.entry("g/m2/d", Measure.GROWTH),
          Map.entry("g/m2/mm", Measure.LAYER_DENSITY),
          Map.entry("g/L", Measure.LOOSE_DENSITY),
          Map.entry("fraction", Measure.SHARE));

  /** A mass on an area may say of what, and in which time: "g DM/m2/d", "g/m2/yr". */
  private static final Pattern ON_AREA = Pattern.compile("g( DM| C)?(/m2(?:/d|/mm)?)(/yr)?");

  private static final double TENTHS_OF_PERCENT = 1000;
  private static final double TENTH = 0.1;
  private static final MathContext ONE_DIGIT = new MathContext(1);

  /** What it measures, or null for a pure number or a unit that is everyone's. */
  public @Nullable Measure measure() {
    Matcher onArea = ON_AREA.matcher(written);
    return MEASURES.get(onArea.matches() ? "g" + onArea.group(2) : written);
  }

  /** The unit for a reader; empty for a pure number. */
  public String symbol(Units units) {
    Measure measure = measure();
    if (measure == null) {
      return written.equals("-") ? "" : written.replace("degC", "°C").replace("m2", "m²");
    }
    String symbol = measure.unit(units).symbol();
    Matcher onArea = ON_AREA.matcher(written);
    if (!onArea.matches()) {
      return symbol;
    }
    String of = onArea.group(1) == null ? "" : onArea.group(1);
    String per = onArea.group(3) == null ? "" : onArea.group(3);
    return symbol.replaceFirst("/", of + "/") + per;
  }

  /** A number without its unit; empty where there is none. */
  public String number(double kept, Units units) {
    if (Double.isNaN(kept)) {
      return "";
    }
    Measure measure = measure();
    if (measure == Measure.SHARE) {
      return DisplayNumber.plain(Math.round(TENTHS_OF_PERCENT * kept) / 10.0);
    }
    return measure == null || units == Units.METRIC
        ? DisplayNumber.plain(kept)
        : readable(measure.shown(kept, units), measure.unit(units));
  }

  /** Nobody reads less than a tenth of an inch to three digits. */
  private static String readable(double shown, Unit unit) {
    return unit == Unit.INCH && Math.abs(shown) < TENTH
        ? DisplayNumber.plain(BigDecimal.valueOf(shown).round(ONE_DIGIT).doubleValue())
        : QuantityWords.plain(shown);
  }

  /** A number with its unit; empty where there is none. */
  public String quantity(double kept, Units units) {
    String number = number(kept, units);
    String symbol = symbol(units);
    return number.isEmpty() || symbol.isEmpty() ? number : number + QuantityWords.THIN + symbol;
  }

  /** A range without its unit. */
  public String range(double low, double high, Units units) {
    return number(low, units) + " to " + number(high, units);
  }
}
