package leafturn.advice.call;

import static leafturn.advice.call.Words.say;

import leafturn.quantity.ClockHour;
import leafturn.quantity.Measure;
import leafturn.quantity.Units;

/**
 * Puts quantities and the trade's two verbs into the words of whoever reads a call.
 *
 * @param units the reader's units; readers of US units also leave and bag clippings, where others
 *     return and collect them
 */
record Reader(Units units) {
  /** Below half of this two decimals would show nothing. */
  private static final double LEAST_SHOWN = 0.01;

  /** A height or length: "98 mm", "3.9 in". */
  String height(double mm) {
    return units == Units.US ? say("%.1f in", Measure.HEIGHT.shown(mm, units)) : say("%.0f mm", mm);
  }

  /** Much water: "31 mm", "1.2 in". */
  String water(double mm) {
    return height(mm);
  }

  /** A little water: "0.4 mm", "0.02 in". */
  String littleWater(double mm) {
    return units == Units.US ? say("%.2f in", Measure.WATER.shown(mm, units)) : say("%.1f mm", mm);
  }

  /** Water as a threshold was set: "0.25 mm", "0.01 in". */
  String waterLimit(double mm) {
    double shown = Measure.WATER.shown(mm, units);
    return units == Units.US
        ? say(mm > 0 && shown < LEAST_SHOWN / 2 ? "%.3f in" : "%.2f in", shown)
        : Words.figure(mm) + " mm";
  }

  /** An air temperature: "2.3 °C", "36 °F". */
  String temperature(double celsius, int decimals) {
    return units == Units.US
        ? say("%.0f °F", Measure.TEMPERATURE.shown(celsius, units))
        : say("%." + decimals + "f °C", celsius);
  }

  /** A temperature as a threshold was set: "2 °C", "36 °F". */
  String temperatureLimit(double celsius) {
    return units == Units.US ? temperature(celsius, 0) : Words.figure(celsius) + " °C";
  }

  /** What is given back or taken on an area: "4.1 g of nitrogen per m²". */
  String onArea(double gPerM2, String of) {
    double least = units == Units.US ? Measure.MASS_PER_AREA.shown(gPerM2, units) : gPerM2;
    if (least > 0 && least < LEAST_SHOWN / 2) {
      return "less than " + onArea(gPerM2 * LEAST_SHOWN / least, of);
    }
    return units == Units.US
        ? say(
            "%.2f lb%s per 1000 ft²",
            Measure.MASS_PER_AREA.shown(gPerM2, units), of.isEmpty() ? "" : " of " + of)
        : say(
            gPerM2 < 1 ? "%.2f g%s per m²" : "%.1f g%s per m²",
            gPerM2,
            of.isEmpty() ? "" : " of " + of);
  }

  /** A load of clippings: "24 g of dry clippings per m²". */
  String load(double gPerM2) {
    return units == Units.US
        ? onArea(gPerM2, "dry clippings")
        : say("%.0f g of dry clippings per m²", gPerM2);
  }

  /** A load as a threshold was set: "40 g/m²", "8.2 lb/1000 ft²". */
  String loadLimit(double gPerM2) {
    return units == Units.US
        ? say("%.1f lb/1000 ft²", Measure.MASS_PER_AREA.shown(gPerM2, units))
        : Words.figure(gPerM2) + " g/m²";
  }

  /** An hour of the clock from 0 to 24: "18"; "6 pm", "noon". */
  String clock(int hour) {
    return ClockHour.shown(hour, units);
  }

  /** "return" or "leave". */
  String giveBack() {
    return units.told("return");
  }

  /** The same standing alone: in "Today, leave" it would be the lawn that is left. */
  String giveBackAlone() {
    return units == Units.US ? giveBack() + " the clippings" : giveBack();
  }

  /** "collect" or "bag". */
  String take() {
    return units.told("collect");
  }
}
